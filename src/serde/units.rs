//! The modules to name in `#[serde(with = "...")]`, one a unit. What a plain number is, is left to `plain.rs`.

macro_rules! unit {
    ($name:ident, $unit:ident) => {
        #[doc = concat!("For a [`Length`](crate::Length) that must be a plain number of ", stringify!($name), ".\n\n")]
        #[doc = concat!("```\nuse scantling::{Length, Unit};\n\n#[derive(serde::Serialize, serde::Deserialize)]\n")]
        #[doc = concat!("struct Part {\n    #[serde(with = \"scantling::serde::", stringify!($name), "\")]\n    width: Length,\n}\n\n")]
        #[doc = concat!("let part: Part = serde_json::from_str(r#\"{\"width\":18.1}\"#)?;\n")]
        #[doc = concat!("assert_eq!(part.width, Length::fraction(181, 10, Unit::", stringify!($unit), "));\n")]
        #[doc = "assert_eq!(serde_json::to_string(&part)?, r#\"{\"width\":18.1}\"#);\n# Ok::<(), serde_json::Error>(())\n```"]
        pub mod $name {
            use serde::{Deserializer, Serializer};

            use crate::length::{Length, Unit};
            use crate::serde::plain::Plain;

            const PLAIN: Plain = Plain { unit: Unit::$unit, name: stringify!($name) };

            #[doc = concat!("Writes a length as a plain number of ", stringify!($name), ".\n\n```\n")]
            #[doc = "use scantling::{Length, Unit};\nuse serde_json::{json, value::Serializer};\n"]
            #[doc = concat!("use scantling::serde::", stringify!($name), "::serialize;\n\n")]
            #[doc = concat!("let length = Length::fraction(5, 2, Unit::", stringify!($unit), ");\n")]
            #[doc = "assert_eq!(serialize(&length, Serializer).unwrap(), json!(2.5));\n```\n\n# Errors\n\n"]
            #[doc = "When the exact number is no decimal of at most 15 digits, or the format refuses it."]
            #[allow(clippy::trivially_copy_pass_by_ref)] // the signature that serde asks for
            pub fn serialize<S: Serializer>(length: &Length, serializer: S) -> Result<S::Ok, S::Error> {
                PLAIN.write(*length, serializer)
            }

            #[doc = concat!("Reads a plain number of ", stringify!($name), ".\n\n```\n")]
            #[doc = "use scantling::{Length, Unit};\nuse serde_json::json;\n"]
            #[doc = concat!("use scantling::serde::", stringify!($name), "::deserialize;\n\n")]
            #[doc = concat!("assert_eq!(deserialize(json!(2.5))?, Length::fraction(5, 2, Unit::", stringify!($unit), "));\n")]
            #[doc = "assert!(deserialize(json!(\"2.5\")).is_err());\n# Ok::<(), serde_json::Error>(())\n```\n\n# Errors\n\n"]
            #[doc = "When there is no number, or a float whose shortest decimal has more than 15 digits, or one that no length"]
            #[doc = "can hold."]
            pub fn deserialize<'de, D: Deserializer<'de>>(deserializer: D) -> Result<Length, D::Error> {
                PLAIN.read(deserializer)
            }

            #[doc = concat!("For an [`Option`] of a [`Length`](crate::Length) that must be a plain number of ", stringify!($name))]
            #[doc = " or null.\n\n```\nuse scantling::{Length, Unit};\n\n#[derive(serde::Serialize, serde::Deserialize)]\n"]
            #[doc = concat!("struct Part {\n    #[serde(with = \"scantling::serde::", stringify!($name), "::option\")]\n")]
            #[doc = "    reveal: Option<Length>,\n}\n\nlet none = Part { reveal: None };\n"]
            #[doc = concat!("let some = Part { reveal: Some(Length::new(3, Unit::", stringify!($unit), ")) };\n")]
            #[doc = "assert_eq!(serde_json::to_string(&none)?, r#\"{\"reveal\":null}\"#);\n"]
            #[doc = "assert_eq!(serde_json::to_string(&some)?, r#\"{\"reveal\":3}\"#);\n# Ok::<(), serde_json::Error>(())\n```"]
            pub mod option {
                use serde::{Deserializer, Serializer};

                use super::PLAIN;
                use crate::length::Length;

                #[doc = concat!("Writes a length as a plain number of ", stringify!($name), ", and none as null.\n\n```\n")]
                #[doc = "use scantling::{Length, Unit};\nuse serde_json::{json, value::Serializer};\n"]
                #[doc = concat!("use scantling::serde::", stringify!($name), "::option::serialize;\n\n")]
                #[doc = "assert_eq!(serialize(&None, Serializer).unwrap(), json!(null));\n```\n\n# Errors\n\n"]
                #[doc = "As without the option."]
                #[allow(clippy::ref_option, clippy::trivially_copy_pass_by_ref)] // the signature that serde asks for
                pub fn serialize<S: Serializer>(length: &Option<Length>, serializer: S) -> Result<S::Ok, S::Error> {
                    PLAIN.write_option(*length, serializer)
                }

                #[doc = concat!("Reads a plain number of ", stringify!($name), ", or null.\n\n```\n")]
                #[doc = "use scantling::{Length, Unit};\nuse serde_json::json;\n"]
                #[doc = concat!("use scantling::serde::", stringify!($name), "::option::deserialize;\n\n")]
                #[doc = "assert_eq!(deserialize(json!(null))?, None);\n"]
                #[doc = concat!("assert_eq!(deserialize(json!(3))?, Some(Length::new(3, Unit::", stringify!($unit), ")));\n")]
                #[doc = "# Ok::<(), serde_json::Error>(())\n```\n\n# Errors\n\nAs without the option."]
                pub fn deserialize<'de, D: Deserializer<'de>>(deserializer: D) -> Result<Option<Length>, D::Error> {
                    PLAIN.read_option(deserializer)
                }
            }
        }
    };
}

unit!(inches, Inch);
unit!(feet, Foot);
unit!(yards, Yard);
unit!(millimeters, Millimeter);
unit!(centimeters, Centimeter);
unit!(meters, Meter);
