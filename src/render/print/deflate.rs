//! Streams → smaller streams (RFC 1950). A compressor is set up once for a thread: making one anew for
//! each stream of a small file takes longer than the compressing.

use flate2::{Compress, Compression, FlushCompress, Status};

/// A middling level: it saves nearly all that can be saved for half the time.
const LEVEL: u32 = 5;

/// One thread’s compressor.
pub struct Deflater {
    compress: Compress,
}

impl Deflater {
    pub fn new() -> Self {
        Self { compress: Compress::new(Compression::new(LEVEL), true) }
    }

    /// The content deflated.
    pub fn deflate(&mut self, content: &[u8]) -> Vec<u8> {
        self.compress.reset();
        let mut deflated = Vec::with_capacity(content.len() / 2 + 64);
        loop {
            let done = usize::try_from(self.compress.total_in()).unwrap_or(content.len());
            let status =
                self.compress.compress_vec(&content[done..], &mut deflated, FlushCompress::Finish);
            if matches!(status, Ok(Status::StreamEnd) | Err(_)) {
                return deflated;
            }
            deflated.reserve(content.len() / 4 + 64);
        }
    }
}

#[cfg(test)]
mod tests {
    use super::*;
    use std::io::Read;

    #[test]
    fn one_compressor_serves_many_streams() {
        let mut deflater = Deflater::new();
        let streams = [vec![7_u8; 100_000], (0..=255).cycle().take(999).collect(), Vec::new()];
        for stream in streams {
            let deflated = deflater.deflate(&stream);
            let mut read = Vec::new();
            flate2::read::ZlibDecoder::new(&deflated[..]).read_to_end(&mut read).unwrap();
            assert_eq!(read, stream);
        }
    }
}
