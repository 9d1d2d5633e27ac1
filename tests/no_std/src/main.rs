//! A program without the standard library: its own panic handler, its own small allocator, and the
//! library. Were the standard library anywhere beneath it, there would be two panic handlers and it
//! would not build. It ends with status 0 if the library worked everything out right.

#![no_std]
#![no_main]

extern crate alloc;

use core::alloc::{GlobalAlloc, Layout};
use core::cell::UnsafeCell;
use core::ffi::{c_char, c_int};
use core::panic::PanicInfo;
use core::ptr::null_mut;
use core::sync::atomic::{AtomicUsize, Ordering::Relaxed};

use alloc::string::ToString;
use alloc::vec::Vec;

use scantling::serde::inches;
use scantling::{Length, Spacing, Tape, Unit};
use serde::Deserialize;
use serde::de::IntoDeserializer;
use serde::de::value::{Error as Unread, F64Deserializer, StrDeserializer};

// For `_start`, which calls `main`, and for `abort`.
#[link(name = "c")]
unsafe extern "C" {
    fn abort() -> !;
}

#[panic_handler]
fn panicked(_: &PanicInfo) -> ! {
    // SAFETY: `abort` takes nothing and may be called at any time.
    unsafe { abort() }
}

/// Named by the unwinding tables that `alloc` comes compiled with. Nothing here unwinds.
#[unsafe(no_mangle)]
extern "C" fn rust_eh_personality() {}

/// Named by those parts of `alloc` that clean up while unwinding.
#[unsafe(no_mangle)]
extern "C" fn _Unwind_Resume() {}

const ROOM: usize = 1 << 16;

/// Gives out one room from front to back and takes nothing back: enough for a program this short.
struct Bump {
    room: UnsafeCell<[u8; ROOM]>,
    taken: AtomicUsize,
}

// SAFETY: places in the room are given out once each, by an atomic counter.
unsafe impl Sync for Bump {}

// SAFETY: what is given out lies within the room, is aligned, and overlaps nothing given out before.
unsafe impl GlobalAlloc for Bump {
    unsafe fn alloc(&self, layout: Layout) -> *mut u8 {
        let most = layout.size() + layout.align();
        let start = self.taken.fetch_add(most, Relaxed);
        if start + most > ROOM {
            return null_mut();
        }
        // SAFETY: with the padding the place still ends within the room, as was just checked.
        unsafe {
            let place = self.room.get().cast::<u8>().add(start);
            place.add(place.align_offset(layout.align()))
        }
    }

    unsafe fn dealloc(&self, _: *mut u8, _: Layout) {}
}

#[global_allocator]
static ALLOCATOR: Bump = Bump { room: UnsafeCell::new([0; ROOM]), taken: AtomicUsize::new(0) };

/// The main job, worked by hand: a case typed as 6'-0" with four shelves of 3/4 in has five openings of
/// 13 4/5 in; the third shelf stands at 42 9/10 in, which a sixteenth tape shows as 42 7/8 in strong.
fn proof() -> Option<bool> {
    let case: Length = "6'-0\"".parse().ok()?;
    let shelf = Length::fraction(3, 4, Unit::Inch);
    let layout = Spacing::equal_openings(4, shelf).over(case).ok()?;
    let gaps: Vec<Length> = layout.gaps().collect();
    let marked = layout.on(&Tape::sixteenths()).ok()?;
    let third = marked.mark(3)?.reading().to_string();
    Some(
        gaps.iter().sum::<Length>() + 4 * shelf == case
            && third == r#"42-7/8" strong by 1/40""#
            && "17 9/8".parse::<Length>().is_err(),
    )
}

/// Feature `serde`: 13 1/2 in as text, and as a plain number of inches.
fn read() -> Result<bool, Unread> {
    let opening = Length::fraction(27, 2, Unit::Inch);
    let text: StrDeserializer<'_, Unread> = "13 1/2 in".into_deserializer();
    let number: F64Deserializer<Unread> = 13.5.into_deserializer();
    Ok(Length::deserialize(text)? == opening && inches::deserialize(number)? == opening)
}

/// The entry that the C runtime calls.
#[unsafe(no_mangle)]
extern "C" fn main(_count: c_int, _words: *const *const c_char) -> c_int {
    c_int::from(proof() != Some(true) || read() != Ok(true))
}
