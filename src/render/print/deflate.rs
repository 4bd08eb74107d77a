//! Streams → smaller streams (RFC 1950). A compressor is set up once for a thread: making one anew for
//! each stream of a small file takes longer than the compressing.

use libdeflater::{CompressionLvl, Compressor};

/// The lowest level: a thirteenth larger than a middling one, for less than half of its time.
const LEVEL: i32 = 1;

/// One thread’s compressor.
pub struct Deflater {
    compressor: Compressor,
    /// Room for the longest stream so far.
    room: Vec<u8>,
}

impl Deflater {
    pub fn new() -> Self {
        let level = CompressionLvl::new(LEVEL).unwrap_or_default();
        Self { compressor: Compressor::new(level), room: Vec::new() }
    }

    /// The content deflated.
    ///
    /// # Panics
    /// Never: there is room for whatever the content becomes.
    pub fn deflate(&mut self, content: &[u8]) -> Vec<u8> {
        let most = self.compressor.zlib_compress_bound(content.len());
        if self.room.len() < most {
            self.room.resize(most, 0);
        }
        let deflated = self.compressor.zlib_compress(content, &mut self.room);
        let length = deflated.expect("the room is as large as the bound");
        self.room[..length].to_vec()
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use libdeflater::Decompressor;

    #[test]
    fn one_compressor_serves_many_streams() {
        let mut deflater = Deflater::new();
        let streams = [vec![7_u8; 100_000], (0..=255).cycle().take(999).collect(), Vec::new()];
        for stream in streams {
            let deflated = deflater.deflate(&stream);
            let mut read = vec![0; stream.len()];
            let length = Decompressor::new().zlib_decompress(&deflated, &mut read).unwrap();
            assert_eq!(read[..length], stream);
        }
    }
}
