//! Names that would lie on each other, moved apart: as little as can be, and never past one another.

use alloc::vec::Vec;

use super::Place;

/// The places nearest to those wanted, in order, that are at least `pitch` apart and within `room`, which must hold as
/// many of them.
///
/// Names that meet form a block, which is put where its names lie best on average; blocks that meet form one.
pub(super) fn spread(wanted: &[Place], pitch: Place, room: (Place, Place)) -> Vec<Place> {
    // With the pitches taken off, names that may not pass one another are numbers that may not fall.
    let mut blocks: Vec<(Place, Place)> = Vec::new();
    let mut before = 0;
    for place in wanted {
        let mut block = (place - before, 1);
        before += pitch;
        while let Some((sum, count)) = blocks.last().copied().filter(|(sum, count)| sum * block.1 > block.0 * count) {
            blocks.pop();
            block = (sum + block.0, count + block.1);
        }
        blocks.push(block);
    }
    let last = room.1 - (before - pitch).max(0);
    let mut places = Vec::with_capacity(wanted.len());
    let mut before = 0;
    for (sum, count) in blocks {
        let place = (sum / count).min(last).max(room.0);
        for _ in 0..count {
            places.push(place + before);
            before += pitch;
        }
    }
    places
}

/// Those of a crowd, which stand in order, that can be named without being moved, at most so many.
pub(super) fn thinned(wanted: &[Place], pitch: Place, most: usize) -> Vec<usize> {
    let mut kept: Vec<usize> = Vec::new();
    for (number, place) in wanted.iter().enumerate() {
        if kept.len() < most && kept.last().is_none_or(|last| place - wanted[*last] >= pitch) {
            kept.push(number);
        }
    }
    kept
}

#[cfg(test)]
mod tests {
    use alloc::vec::Vec;

    use quickcheck::quickcheck;

    use super::{spread, thinned};

    // Worked by hand.
    #[test]
    fn names_are_moved_as_little_as_can_be() {
        let room = (0, 100);
        for (wanted, places) in [
            (&[][..], &[][..]),
            (&[50], &[50]),
            (&[20, 40, 60], &[20, 40, 60]),
            (&[50, 50], &[45, 55]),
            (&[50, 50, 50], &[40, 50, 60]),
            (&[0, 0, 90], &[0, 10, 90]),
            (&[10, 95, 100], &[10, 90, 100]),
            (&[20, 24, 80], &[17, 27, 80]),
        ] {
            assert_eq!(spread(wanted, 10, room), places, "{wanted:?}");
        }
        assert_eq!(thinned(&[0, 4, 9, 10, 30], 10, 5), [0, 3, 4]);
        assert_eq!(thinned(&[0, 10, 20], 10, 2), [0, 1]);
    }

    quickcheck! {
        fn names_never_meet_and_stay_in_their_room(wanted: Vec<u16>) -> bool {
            let mut wanted: Vec<_> = wanted.into_iter().map(i64::from).collect();
            wanted.sort_unstable();
            let room = (0, 10 * 65_536_i64.max(i64::try_from(wanted.len()).unwrap()));
            let places = spread(&wanted, 10, room);
            places.len() == wanted.len()
                && places.iter().all(|place| (room.0..=room.1).contains(place))
                && places.windows(2).all(|pair| pair[1] - pair[0] >= 10)
        }
    }
}
