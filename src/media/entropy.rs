//! Whether the coded lines of a JPEG lead from their beginning to their end.
//!
//! A JPEG has no sums over its lines, but they have to come out: every code is known, a block
//! has 64 values and no more, and the last block ends where the lines end. A lost or emptied
//! sector of a disk breaks one of these; of 32 bytes that became others, about half are seen,
//! since codes soon fall into step again. Only sequential Huffman coding, which cameras and
//! phones write, is followed; of other kinds nothing is said.
//!
//! Source: ITU-T T.81: B.2.2 to B.2.4, headers and tables; C.2, codes from lengths; F.2.2,
//! decoding; E.2.4, restarts; F.1.2.3, the bits that fill the last byte.

/// So many bytes may stand behind the last block: some cameras fill up their lines.
const SPARE: usize = 32;
/// A block's values: 8 by 8.
const VALUES: usize = 64;

/// What the segments before the lines said of them.
#[derive(Default)]
pub(super) struct Lines {
    frame: Option<Frame>,
    /// Codes of first values and of the others, four tables each.
    codes: [[Option<Codes>; 4]; 2],
    /// Blocks' groups between two restarts; 0 without restarts.
    interval: usize,
}

/// A picture's size and its components' shares in a group of blocks.
struct Frame {
    width: usize,
    height: usize,
    components: Vec<Component>,
}

struct Component {
    id: u8,
    across: usize,
    down: usize,
}

/// For each 16 bits that may come: how long the code is that they begin with, and its value.
struct Codes(Vec<(u8, u8)>);

/// A block's tables: the number for its first value, and the one for the others.
type Tables = (usize, usize);

impl Lines {
    /// Takes in a segment that stands before the lines.
    pub(super) fn take(&mut self, marker: u8, body: &[u8]) -> Option<()> {
        match marker {
            0xc0 | 0xc1 => self.frame = Some(Frame::read(body)?),
            // Progressive, lossless and arithmetic coding are not followed.
            0xc2..=0xc3 | 0xc5..=0xc7 | 0xc9..=0xcf => self.frame = None,
            0xc4 => self.read_codes(body)?,
            0xdd => self.interval = usize::from(u16::from_be_bytes(*body.first_chunk()?)),
            _ => {}
        }
        Some(())
    }

    fn read_codes(&mut self, mut body: &[u8]) -> Option<()> {
        while let Some((&[which], rest)) = body.split_first_chunk::<1>() {
            let (counts, rest) = rest.split_first_chunk::<16>()?;
            let sum = counts.iter().map(|count| usize::from(*count)).sum();
            let (values, rest) = rest.split_at_checked(sum)?;
            let kind = self.codes.get_mut(usize::from(which >> 4))?;
            *kind.get_mut(usize::from(which & 15))? = Some(Codes::read(counts, values)?);
            body = rest;
        }
        Some(())
    }

    /// Whether the lines behind the scan header `head` come out; `true` where their coding is
    /// none that is followed.
    pub(super) fn come_out(&self, head: &[u8], lines: &[u8]) -> bool {
        let Some(frame) = self.frame.as_ref().filter(|frame| frame.height > 0) else {
            return true;
        };
        self.followed(frame, head, lines).is_some()
    }

    fn followed(&self, frame: &Frame, head: &[u8], lines: &[u8]) -> Option<()> {
        let (blocks, mut left) = frame.groups(head)?;
        for part in parts(lines, self.interval) {
            let here = if self.interval == 0 { left } else { left.min(self.interval) };
            let mut bits = Bits { rest: part, ..Bits::default() };
            for _ in 0..here {
                for tables in &blocks {
                    self.block(&mut bits, *tables)?;
                }
            }
            bits.is_at_the_end().then_some(())?;
            left -= here;
        }
        (left == 0).then_some(())
    }

    /// Reads over one block (F.2.2.1, F.2.2.2).
    fn block(&self, bits: &mut Bits, (first, others): Tables) -> Option<()> {
        let size = self.codes[0][first].as_ref()?.next(bits)?;
        bits.skip(size)?;
        let codes = self.codes[1][others].as_ref()?;
        let mut filled = 1;
        while filled < VALUES {
            let code = codes.next(bits)?;
            let (zeros, size) = (usize::from(code >> 4), code & 15);
            match (zeros, size) {
                (0, 0) => break,
                (1..=14, 0) => return None,
                _ => filled += zeros + 1,
            }
            (filled <= VALUES).then_some(())?;
            bits.skip(size)?;
        }
        Some(())
    }
}

/// The lines between two restarts each.
fn parts(lines: &[u8], interval: usize) -> Vec<&[u8]> {
    if interval == 0 {
        return vec![lines];
    }
    let restart = |at: &usize| matches!(lines[*at..], [0xff, 0xd0..=0xd7, ..]);
    let mut parts = Vec::new();
    let mut from = 0;
    for at in (0..lines.len()).filter(restart) {
        parts.push(&lines[from..at]);
        from = at + 2;
    }
    parts.push(&lines[from..]);
    parts
}

impl Frame {
    fn read(body: &[u8]) -> Option<Self> {
        let [_, h1, h0, w1, w0, count, rest @ ..] = body else { return None };
        let components = rest.chunks_exact(3).take(usize::from(*count)).map(|c| {
            let (across, down) = (usize::from(c[1] >> 4), usize::from(c[1] & 15));
            (across > 0 && down > 0).then_some(Component { id: c[0], across, down })
        });
        Some(Self {
            height: usize::from(u16::from_be_bytes([*h1, *h0])),
            width: usize::from(u16::from_be_bytes([*w1, *w0])),
            components: components.collect::<Option<_>>()?,
        })
    }

    /// The tables of each block in a group, and how many groups there are (A.2).
    fn groups(&self, head: &[u8]) -> Option<(Vec<Tables>, usize)> {
        let (count, rest) = head.split_first()?;
        let mut chosen = Vec::new();
        for pair in rest.chunks_exact(2).take(usize::from(*count)) {
            let component = self.components.iter().find(|own| own.id == pair[0])?;
            let tables = (usize::from(pair[1] >> 4), usize::from(pair[1] & 15));
            (tables.0 < 4 && tables.1 < 4).then_some(())?;
            chosen.push((component, tables));
        }
        let widest = self.components.iter().map(|own| own.across).max()?;
        let highest = self.components.iter().map(|own| own.down).max()?;
        if let [(own, tables)] = &chosen[..] {
            let across = (self.width * own.across).div_ceil(widest).div_ceil(8);
            let down = (self.height * own.down).div_ceil(highest).div_ceil(8);
            return Some((vec![*tables], across * down));
        }
        let repeated = |(own, tables): &(&Component, Tables)| {
            std::iter::repeat_n(*tables, own.across * own.down)
        };
        let groups = self.width.div_ceil(8 * widest) * self.height.div_ceil(8 * highest);
        Some((chosen.iter().flat_map(repeated).collect(), groups))
    }
}

impl Codes {
    /// Codes from how many there are of each length, and their values (C.2).
    fn read(counts: &[u8; 16], values: &[u8]) -> Option<Self> {
        let mut table = Vec::with_capacity(1 << 16);
        let mut values = values.iter();
        for (length, count) in (1_u8..).zip(counts) {
            for value in values.by_ref().take(usize::from(*count)) {
                table.extend(std::iter::repeat_n((length, *value), 1 << (16 - length)));
            }
        }
        (table.len() <= 1 << 16).then_some(())?;
        table.resize(1 << 16, (0, 0));
        Some(Self(table))
    }

    fn next(&self, bits: &mut Bits) -> Option<u8> {
        let (length, value) = self.0[bits.coming()];
        (length > 0).then_some(())?;
        bits.skip(length)?;
        Some(value)
    }
}

/// Reads bits, the highest first, without the zero behind each byte of ones.
#[derive(Default)]
struct Bits<'a> {
    rest: &'a [u8],
    window: u64,
    held: u32,
    /// Zeros that stand at the end of the window, since nothing more came.
    lent: u32,
}

impl Bits<'_> {
    fn fill(&mut self) {
        while self.held <= 48 {
            let (byte, taken) = match self.rest {
                [0xff, 0, ..] => (0xff, 2),
                [byte, ..] => (*byte, 1),
                [] => (0, 0),
            };
            self.rest = &self.rest[taken..];
            self.lent += if taken == 0 { 8 } else { 0 };
            self.window = self.window << 8 | u64::from(byte);
            self.held += 8;
        }
    }

    /// The 16 bits that come next, as a number.
    fn coming(&mut self) -> usize {
        if self.held < 32 {
            self.fill();
        }
        usize::from((self.window >> (self.held - 16)) as u16)
    }

    /// Goes on by up to 16 bits, where so many are left.
    fn skip(&mut self, bits: u8) -> Option<()> {
        self.held = self.held.checked_sub(u32::from(bits))?;
        (self.held >= self.lent).then_some(())
    }

    fn is_at_the_end(&self) -> bool {
        let filling = self.rest.iter().rev().take_while(|byte| **byte == 0xff).count();
        let held = (self.held.saturating_sub(self.lent) / 8) as usize;
        held + self.rest.len() - filling <= SPARE
    }
}
