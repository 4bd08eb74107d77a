//! Streams → smaller streams (RFC 1950). A compressor is set up once for a thread: making one anew for
//! each stream of a small file takes longer than the compressing.

use libdeflater::{CompressionLvl, Compressor};

/// The lowest level: drawings and words are a twentieth larger than at a middling one, for less than half of its time.
const QUICK: i32 = 1;

/// A middling one: for pictures, which are made once for several files.
const THOROUGH: i32 = 5;

/// One thread’s compressors.
pub struct Deflater {
    quick: Compressor,
    thorough: Compressor,
    /// Room for the longest stream so far.
    room: Vec<u8>,
}

impl Deflater {
    pub fn new() -> Self {
        let [quick, thorough] = [QUICK, THOROUGH]
            .map(|level| Compressor::new(CompressionLvl::new(level).unwrap_or_default()));
        Self { quick, thorough, room: Vec::new() }
    }

    /// The content deflated.
    pub fn deflate(&mut self, content: &[u8]) -> Vec<u8> {
        deflate_with(&mut self.quick, &mut self.room, content)
    }

    /// The content deflated at more leisure.
    pub fn deflate_well(&mut self, content: &[u8]) -> Vec<u8> {
        deflate_with(&mut self.thorough, &mut self.room, content)
    }
}

fn deflate_with(compressor: &mut Compressor, room: &mut Vec<u8>, content: &[u8]) -> Vec<u8> {
    let most = compressor.zlib_compress_bound(content.len());
    if room.len() < most {
        room.resize(most, 0);
    }
    let deflated = compressor.zlib_compress(content, room);
    let length = deflated.expect("the room is as large as the bound");
    room[..length].to_vec()
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
            for deflated in [deflater.deflate(&stream), deflater.deflate_well(&stream)] {
                let mut read = vec![0; stream.len()];
                let length = Decompressor::new().zlib_decompress(&deflated, &mut read).unwrap();
                assert_eq!(read[..length], stream);
            }
        }
    }
}
