//! What printpdf has made, as objects of lopdf → the syntax of PDF.

use lopdf::{Dictionary, Object, ObjectId};

use super::pdf_text::PdfText;

/// An object in the syntax of PDF; in strings every byte is written by its number.
pub fn write_object(object: &Object, text: &mut PdfText) {
    match object {
        Object::Null => text.put("null "),
        Object::Boolean(value) => text.put(&format!("{value} ")),
        Object::Integer(value) => text.put(&format!("{value} ")),
        Object::Real(value) => text.put(&format!("{value} ")),
        Object::Name(name) => text.put("/").put(&String::from_utf8_lossy(name)).put(" "),
        Object::String(bytes, _) => {
            let digits: String = bytes.iter().map(|byte| format!("{byte:02X}")).collect();
            text.put("<").put(&digits).put(">")
        }
        Object::Array(objects) => {
            text.put("[");
            for object in objects {
                write_object(object, text);
            }
            text.put("]")
        }
        Object::Dictionary(entries) => {
            write_entries(entries, text.put("<<"));
            text.put(">>")
        }
        Object::Stream(stream) => {
            write_entries(&stream.dict, text.put("<<"));
            text.put(">>stream\n").bytes.extend_from_slice(&stream.content);
            text.put("\nendstream")
        }
        Object::Reference(id) => text.reference(number_of(*id)).put(" "),
    };
}

/// What stands in a dictionary, without its brackets.
pub fn write_entries(entries: &Dictionary, text: &mut PdfText) {
    for (name, object) in entries {
        text.put("/").put(&String::from_utf8_lossy(name)).put(" ");
        write_object(object, text);
    }
}

fn number_of(id: ObjectId) -> usize {
    usize::try_from(id.0).expect("a number of 32 bits fits")
}
