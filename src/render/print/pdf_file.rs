//! Numbered objects → the bytes of a PDF 1.7 file: streams one by one, all other objects packed into one
//! stream, and the table of where each is (ISO 32000-1, 7.5.7 and 7.5.8).

use super::deflate::Deflater;
use super::pdf_text::PdfText;

/// Where an object is.
#[derive(Clone, Copy, Debug, Default)]
enum Place {
    /// No object has this number.
    #[default]
    Free,
    /// So many bytes from the beginning of the file.
    At(usize),
    /// In a stream of packed objects: the number of that, and the so-manieth in it.
    Packed(usize, usize),
}

/// So many objects are packed into one stream: a reader unpacks all for the sake of one.
const MOST_PACKED: usize = 2_000;

/// Objects that become one stream.
#[derive(Debug, Default)]
struct Pool {
    /// Of the stream.
    number: usize,
    /// The number of each object, and where it begins.
    packed: Vec<(usize, usize)>,
    text: PdfText,
}

/// A file that is being written.
#[derive(Debug)]
pub struct PdfFile {
    out: PdfText,
    places: Vec<Place>,
    pools: Vec<Pool>,
}

impl PdfFile {
    /// A file whose own objects are numbered from `first` on.
    pub fn new(first: usize) -> Self {
        let mut out = PdfText { bytes: Vec::with_capacity(40_000) };
        // The four bytes say that the file is not plain text (7.5.2).
        out.bytes.extend_from_slice(b"%PDF-1.7\n%\xE2\xE3\xCF\xD3\n");
        Self { out, places: vec![Place::Free; first], pools: Vec::new() }
    }

    /// The number of an object to come.
    pub fn number(&mut self) -> usize {
        self.places.push(Place::Free);
        self.places.len() - 1
    }

    /// Adds an object that is no stream.
    pub fn object(&mut self, number: usize, write: impl FnOnce(&mut PdfText)) {
        if self.pools.last().is_none_or(|pool| pool.packed.len() == MOST_PACKED) {
            let number = self.number();
            self.pools.push(Pool { number, ..Pool::default() });
        }
        let pool = self.pools.last_mut().expect("one was added if there was none");
        self.places[number] = Place::Packed(pool.number, pool.packed.len());
        pool.packed.push((number, pool.text.bytes.len()));
        write(&mut pool.text);
        pool.text.put("\n");
    }

    /// Adds a stream: the entries of its dictionary but for its length, and its bytes as they are.
    pub fn stream(&mut self, number: usize, entries: &str, content: &[u8]) {
        self.places[number] = Place::At(self.out.bytes.len());
        self.out.integer(number).put(" 0 obj\n<<").put(entries).put("/Length ");
        self.out.integer(content.len()).put(">>stream\n");
        self.out.bytes.extend_from_slice(content);
        self.out.put("\nendstream\nendobj\n");
    }

    /// Adds an object that was written before, stream or not.
    pub fn whole(&mut self, number: usize, body: &[u8]) {
        self.places[number] = Place::At(self.out.bytes.len());
        self.out.integer(number).put(" 0 obj\n");
        self.out.bytes.extend_from_slice(body);
        self.out.put("\nendobj\n");
    }

    /// The finished file. Its id is drawn from its content, so that the same pages have the same id.
    pub fn finish(mut self, root: usize, info: usize, deflater: &mut Deflater) -> Vec<u8> {
        for pool in std::mem::take(&mut self.pools) {
            self.write_pool(&pool, deflater);
        }
        let (low, high) = (fingerprint(&self.out.bytes, 0), fingerprint(&self.out.bytes, 1));
        let (table, start) = (self.number(), self.out.bytes.len());
        self.places[table] = Place::At(start);
        let rows = rows_of(&self.places);
        let mut entries = PdfText::default();
        entries.put("/Type/XRef/W[1 4 2]/Filter/FlateDecode/DecodeParms<</Predictor 12/Columns ");
        entries.integer(ROW).put(">>/Size ").integer(self.places.len());
        entries.put("/Root ").reference(root).put("/Info ").reference(info);
        let id = format!("<{low:016X}{high:016X}>");
        entries.put(&format!("/ID[{id}{id}]"));
        let entries = String::from_utf8(entries.bytes).expect("our own syntax is ASCII");
        self.stream(table, &entries, &deflater.deflate(&rows));
        self.out.put("startxref\n").integer(start).put("\n%%EOF\n");
        self.out.bytes
    }

    /// The packed objects, before them the number of each and where it begins.
    fn write_pool(&mut self, pool: &Pool, deflater: &mut Deflater) {
        let mut content = PdfText { bytes: Vec::with_capacity(pool.text.bytes.len() + 4_000) };
        for (number, start) in &pool.packed {
            content.integer(*number).put(" ").integer(*start).put(" ");
        }
        let first = content.bytes.len();
        content.bytes.extend_from_slice(&pool.text.bytes);
        let count = pool.packed.len();
        let entries = format!("/Type/ObjStm/Filter/FlateDecode/N {count}/First {first}");
        self.stream(pool.number, &entries, &deflater.deflate(&content.bytes));
    }
}

/// The length of a row.
const ROW: usize = 7;

/// A row that is written as what it has more than the one above (filter 2 of PNG; ISO 32000-1, 7.4.4.4): packed objects
/// follow one another, so that next to nothing is left.
const UP: u8 = 2;

fn rows_of(places: &[Place]) -> Vec<u8> {
    let mut rows = Vec::with_capacity(places.len() * (ROW + 1));
    let mut above = [0; ROW];
    for row in places.iter().map(|place| row_of(*place)) {
        rows.push(UP);
        rows.extend(row.iter().zip(above).map(|(byte, above)| byte.wrapping_sub(above)));
        above = row;
    }
    rows
}

/// A row of the table: kind, place and what more there is to say (ISO 32000-1, table 18).
fn row_of(place: Place) -> [u8; ROW] {
    let (kind, place, more) = match place {
        Place::Free => (0, 0, u16::MAX),
        Place::At(place) => (1, place, 0),
        Place::Packed(pool, index) => (2, pool, u16::try_from(index).unwrap_or(u16::MAX)),
    };
    let mut row = [kind; ROW];
    row[1..5].copy_from_slice(&u32::try_from(place).unwrap_or(u32::MAX).to_be_bytes());
    row[5..].copy_from_slice(&more.to_be_bytes());
    row
}

/// FNV-1a, 64 bit, taken over eight bytes at a time for speed.
fn fingerprint(bytes: &[u8], seed: u64) -> u64 {
    let start = 0xcbf2_9ce4_8422_2325 ^ seed;
    let mix = |hash: u64, word: u64| {
        let mixed = (hash ^ word).wrapping_mul(0x0100_0000_01b3);
        mixed ^ (mixed >> 32)
    };
    let words = bytes.chunks_exact(8);
    let mut last = [0; 8];
    last[..words.remainder().len()].copy_from_slice(words.remainder());
    let whole = words.filter_map(|word| word.first_chunk()).map(|word| u64::from_le_bytes(*word));
    mix(whole.fold(start, mix), u64::from_le_bytes(last))
}
