//! Objects: a type taken apart into named fields, and put together again by a function that may refuse. Which
//! fields a type has is left to its own file.

use core::fmt::{self, Formatter};

use serde::Deserialize;
use serde::de::value::UnitDeserializer;
use serde::de::{DeserializeSeed, Deserializer, Error, Expected, IgnoredAny, IntoDeserializer, MapAccess, SeqAccess, Visitor};

/// Gives a type the form of an object. `$apart` is a function from a reference to the type to its fields,
/// `$together` one from the fields to the type or a refusal.
macro_rules! object {
    ($type:ident, $what:literal, $apart:expr, $together:expr, $($field:ident: $kind:ty),+) => {
        impl serde::Serialize for $type {
            fn serialize<S: serde::Serializer>(&self, serializer: S) -> Result<S::Ok, S::Error> {
                use serde::ser::SerializeStruct;

                let ($($field,)+) = ($apart)(self);
                let mut object = serializer.serialize_struct(stringify!($type), [$(stringify!($field)),+].len())?;
                $(object.serialize_field(stringify!($field), &$field)?;)+
                object.end()
            }
        }

        impl<'de> serde::Deserialize<'de> for $type {
            fn deserialize<D: serde::Deserializer<'de>>(deserializer: D) -> Result<Self, D::Error> {
                use serde::de::{Error, MapAccess, SeqAccess, Unexpected, Visitor};
                use $crate::serde::object::{Name, in_turn, no_more, or_missing, put};

                const FIELDS: &[&str] = &[$(stringify!($field)),+];

                struct Object {
                    readable: bool,
                }

                impl<'de> Visitor<'de> for Object {
                    type Value = $type;

                    fn expecting(&self, out: &mut core::fmt::Formatter<'_>) -> core::fmt::Result {
                        out.write_str($what)
                    }

                    fn visit_map<A: MapAccess<'de>>(self, mut map: A) -> Result<$type, A::Error> {
                        $(let mut $field = None;)+
                        while let Some(name) = map.next_key_seed(Name(FIELDS))? {
                            $(if name == stringify!($field) {
                                put(&mut $field, name, &mut map)?;
                            })+
                        }
                        $(let $field: $kind = or_missing($field, stringify!($field))?;)+
                        ($together)($($field),+).map_err(A::Error::custom)
                    }

                    fn visit_seq<A: SeqAccess<'de>>(self, mut list: A) -> Result<$type, A::Error> {
                        if self.readable {
                            return Err(A::Error::invalid_type(Unexpected::Seq, &self));
                        }
                        let mut count = 0;
                        $(let $field: $kind = in_turn(&mut list, &mut count, &self)?;)+
                        no_more(&mut list, count, &self)?;
                        ($together)($($field),+).map_err(A::Error::custom)
                    }
                }

                let readable = deserializer.is_human_readable();
                deserializer.deserialize_struct(stringify!($type), FIELDS, Object { readable })
            }
        }
    };
}
pub(super) use object;

/// Reads the name of a field, which must be one of these.
pub(super) struct Name(pub(super) &'static [&'static str]);

impl<'de> DeserializeSeed<'de> for Name {
    type Value = &'static str;

    fn deserialize<D: Deserializer<'de>>(self, deserializer: D) -> Result<&'static str, D::Error> {
        deserializer.deserialize_identifier(self)
    }
}

impl Visitor<'_> for Name {
    type Value = &'static str;

    fn expecting(&self, out: &mut Formatter<'_>) -> fmt::Result {
        out.write_str("the name of a field")
    }

    fn visit_str<E: Error>(self, name: &str) -> Result<&'static str, E> {
        self.0.iter().find(|known| **known == name).copied().ok_or_else(|| E::unknown_field(name, self.0))
    }
}

/// Reads the field whose name was just read, once.
pub(super) fn put<'de, T, A>(field: &mut Option<T>, name: &'static str, map: &mut A) -> Result<(), A::Error>
where
    T: Deserialize<'de>,
    A: MapAccess<'de>,
{
    if field.is_some() {
        return Err(A::Error::duplicate_field(name));
    }
    *field = Some(map.next_value()?);
    Ok(())
}

/// A field that was left out is null, if it may be.
pub(super) fn or_missing<'de, T: Deserialize<'de>, E: Error>(field: Option<T>, name: &'static str) -> Result<T, E> {
    let null: UnitDeserializer<E> = ().into_deserializer();
    field.map_or_else(|| T::deserialize(null).map_err(|_| E::missing_field(name)), Ok)
}

/// Reads the next field where they have no names.
pub(super) fn in_turn<'de, T, A>(list: &mut A, count: &mut usize, expected: &dyn Expected) -> Result<T, A::Error>
where
    T: Deserialize<'de>,
    A: SeqAccess<'de>,
{
    let field = list.next_element()?.ok_or_else(|| A::Error::invalid_length(*count, expected))?;
    *count += 1;
    Ok(field)
}

/// Makes sure that nothing follows the last.
pub(super) fn no_more<'de, A: SeqAccess<'de>>(list: &mut A, count: usize, expected: &dyn Expected) -> Result<(), A::Error> {
    match list.next_element::<IgnoredAny>()? {
        None => Ok(()),
        Some(_) => Err(A::Error::invalid_length(count + 1, expected)),
    }
}
