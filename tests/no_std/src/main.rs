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

use alloc::vec::Vec;
use scantling::{Length, LengthError, Unit};

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

/// What the library is asked, worked by hand: five openings between six shelves of 3/4 in in a case of
/// 72 in are 13 1/2 in each; the openings and the shelves make up the case again.
fn proof() -> Result<bool, LengthError> {
    let (case, shelf) = (Length::new(72, Unit::Inch), Length::fraction(3, 4, Unit::Inch));
    let opening = (case - 6 * shelf) / 5;
    let mut parts = Vec::new();
    parts.resize(6, shelf);
    parts.resize(11, opening);
    let whole: Length = parts.iter().sum();
    let nearest = Length::new(1, Unit::Meter).round(Length::fraction(1, 32, Unit::Inch))?;
    Ok(opening == Length::fraction(27, 2, Unit::Inch)
        && whole == case
        && nearest == Length::fraction(315, 8, Unit::Inch)
        && Length::MAX.checked_add(opening).is_none())
}

/// The entry that the C runtime calls.
#[unsafe(no_mangle)]
extern "C" fn main(_count: c_int, _words: *const *const c_char) -> c_int {
    c_int::from(proof() != Ok(true))
}
