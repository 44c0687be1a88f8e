"""Pictures with a colour profile, on pages and on paper, against another colour engine.

    python3 colours.py TOURIER WORK

A picture of many colours is written as PNG and as JPEG with the profiles that phones and
cameras give theirs, Display P3 and Adobe RGB (1998), and published. What pages and a handout
show has no profile, so its numbers have to be those of sRGB: they are held against the same
picture turned by Pillow's ImageCms (LittleCMS), dot by dot.

The profiles are written here from published numbers, as ICC.1:2022 lays them out (7.2 the
head, 7.3 the table, 8.3.4 tags of three components; 10.6 curves, 10.18 parametric ones, 10.31
XYZ), so that no engine's own profile judges itself. Primaries and curves: SMPTE EG 432-1 and
RP 431-2 (P3, with the white and the curve of sRGB), Adobe RGB (1998) Color Image Encoding
(May 2005, 4.3.1), IEC 61966-2-1 (sRGB). White is taken to D50 by the Bradford matrix (ICC.1
annex E). Differences are dE*ab of CIE 15 (ISO/CIE 11664-4), between sRGB numbers.
"""

import io
import shutil
import struct
import subprocess
import sys
from pathlib import Path

import pikepdf
from PIL import Image, ImageChops, ImageCms

from tally import Tally

D65, D50 = (0.3127, 0.3290), (0.9642, 1.0, 0.8249)
BRADFORD = ((0.8951, 0.2664, -0.1614), (-0.7502, 1.7135, 0.0367), (0.0389, -0.0685, 1.0296))
SRGB = ((0.640, 0.330), (0.300, 0.600), (0.150, 0.060))
P3 = ((0.680, 0.320), (0.265, 0.690), (0.150, 0.060))
ADOBE = ((0.640, 0.330), (0.210, 0.710), (0.150, 0.060))
# How far a dot may lie from the other engine's: both round to whole numbers.
MOST_LEVELS = 2
# Of a JPEG, which keeps no dot as it is: on the average, and what one without its profile misses.
MOST_MEAN, LEAST_UNTURNED = 1.5, 3.0


def times(matrix, vector):
    return [sum(a * b for a, b in zip(row, vector)) for row in matrix]


def inverse(m):
    (a, b, c), (d, e, f), (g, h, i) = m
    of = a * (e * i - f * h) - b * (d * i - f * g) + c * (d * h - e * g)
    rows = ((e * i - f * h, c * h - b * i, b * f - c * e), (f * g - d * i, a * i - c * g, c * d - a * f),
            (d * h - e * g, b * g - a * h, a * e - b * d))
    return [[x / of for x in row] for row in rows]


def xyz(point):
    return [point[0] / point[1], 1, (1 - point[0] - point[1]) / point[1]]


def colorants(primaries):
    """XYZ of red, green and blue at their most, where white is D50."""
    columns = list(zip(*map(xyz, primaries)))
    share = times(inverse(columns), xyz(D65))
    cones, wanted = times(BRADFORD, xyz(D65)), times(BRADFORD, D50)
    back = inverse(BRADFORD)

    def to_d50(colour):
        seen = [own * to / of for own, of, to in zip(times(BRADFORD, colour), cones, wanted)]
        return times(back, seen)

    return [to_d50([part * of for part in xyz(point)]) for point, of in zip(primaries, share)]


def fixed(number):
    return struct.pack(">i", round(number * 65536))


def profile(name, primaries, curve):
    """The bytes of a profile of a display."""
    text = name.encode("utf-16-be")
    words = b"mluc" + struct.pack(">IIIHHII", 0, 1, 12, 0x656E, 0x5553, len(text), 28) + text
    three = {tag: b"XYZ \0\0\0\0" + b"".join(map(fixed, value))
             for tag, value in zip((b"rXYZ", b"gXYZ", b"bXYZ"), colorants(primaries))}
    tags = {b"desc": words, b"cprt": words, b"wtpt": b"XYZ \0\0\0\0" + b"".join(map(fixed, D50)),
            **three, b"rTRC": curve, b"gTRC": curve, b"bTRC": curve}
    table, body, at = b"", b"", 128 + 4 + 12 * len(tags)
    for tag, value in tags.items():
        table += tag + struct.pack(">II", at + len(body), len(value))
        body += value + b"\0" * (-len(value) % 4)
    head = struct.pack(">I4sI4s4s4s", at + len(body), b"none", 0x04400000, b"mntr", b"RGB ", b"XYZ ")
    head += struct.pack(">6H", 2026, 1, 1, 0, 0, 0) + b"acsp" + b"\0" * 28 + b"".join(map(fixed, D50))
    return head.ljust(128, b"\0") + struct.pack(">I", len(tags)) + table + body


def parametric(kind, *numbers):
    return b"para" + struct.pack(">IHH", 0, kind, 0) + b"".join(map(fixed, numbers))


# IEC 61966-2-1: the power, and the straight line at its foot.
LIKE_SRGB = parametric(3, 2.4, 1 / 1.055, 0.055 / 1.055, 1 / 12.92, 0.04045)
PROFILES = {
    "display-p3": profile("Display P3", P3, LIKE_SRGB),
    # 2 + 51/256, as the document has it.
    "adobe-rgb": profile("Adobe RGB (1998)", ADOBE, parametric(0, 2.19921875)),
    "srgb": profile("sRGB", SRGB, LIKE_SRGB),
}


def colours(size):
    """Smooth as a photograph is, and with every hue."""
    wide, high = size
    across, down = Image.linear_gradient("L").rotate(90).resize(size), Image.linear_gradient("L").resize(size)
    slanted = Image.blend(across, down, 0.5).point(lambda level: 255 - abs(2 * level - 255))
    return Image.merge("RGB", (across, down, slanted))


def turned(picture, name):
    """The picture in sRGB, as the other engine has it."""
    of = ImageCms.ImageCmsProfile(io.BytesIO(PROFILES[name]))
    return ImageCms.profileToProfile(picture, of, ImageCms.createProfile("sRGB"), outputMode="RGB")


def levels(one, other):
    """The furthest that a number of one picture lies from that of the other."""
    return max(most for _, most in ImageChops.difference(one, other).getextrema())


def lab(dot):
    light = [(v / 12.92 if v <= 0.04045 else ((v + 0.055) / 1.055) ** 2.4) for v in (n / 255 for n in dot)]
    rows = list(zip(*(colour for colour in colorants(SRGB))))
    shares = [part / white for part, white in zip(times(rows, light), D50)]
    f = [s ** (1 / 3) if s > (6 / 29) ** 3 else s * (29 / 6) ** 2 / 3 + 4 / 29 for s in shares]
    return 116 * f[1] - 16, 500 * (f[0] - f[1]), 200 * (f[1] - f[2])


def difference(one, other):
    """dE*ab on the average, of dots spread over both pictures."""
    size = (24, 16)
    small = [it.convert("RGB").resize(size, Image.Resampling.BOX) for it in (one, other)]
    dots = [(x, y) for x in range(size[0]) for y in range(size[1])]
    pairs = [[lab(it.getpixel(at)) for it in small] for at in dots]
    apart = [sum((a - b) ** 2 for a, b in zip(x, y)) ** 0.5 for x, y in pairs]
    return sum(apart) / len(apart)


def course(tourier, folder, names):
    """A small course, one of whose recipes shows the pictures."""
    subprocess.run([tourier, "start", folder], check=True, stdout=subprocess.DEVNULL)
    recipe = folder / "recipes" / "soft-rolls.md"
    shown = "".join(f"\n\n![Many colours, {name}.](../media/{name})" for name in names)
    recipe.write_text(recipe.read_text(encoding="utf-8") + shown + "\n", encoding="utf-8")


def on_pages(tally, site, name, was):
    """Each of the sizes that pages offer."""
    stem, ending = name.rsplit(".", 1)
    of = stem.removesuffix("-photo")
    for file in sorted(site.glob(f"media/{stem}-*.{ending}")):
        found = Image.open(file)
        tally.check("icc_profile" not in found.info, f"{file.name} carries a profile")
        found = found.convert("RGB")
        wanted = turned(was.resize(found.size, Image.Resampling.LANCZOS), of)
        if ending == "png" and found.size == was.size:
            apart = levels(found, wanted)
            tally.check(apart <= MOST_LEVELS, f"{file.name}: {apart} levels of 255 from the other engine")
        near = difference(found, wanted)
        tally.check(near <= MOST_MEAN, f"{file.name}: dE*ab {near:.2f} from the other engine")
        print(f"  {file.name}: dE*ab {near:.2f}, untouched {difference(was, wanted):.2f}")


def on_paper(tally, pdf, was, names):
    """Every picture of many colours in a handout is one of those wanted, and each is there."""
    wanted = {name: turned(was, name.rsplit(".", 1)[0].removesuffix("-photo")) for name in names}
    found = set()
    with pikepdf.open(pdf) as paper:
        for page in paper.pages:
            # Pictures stand in forms too: all that the page reaches.
            for image in reached(page.obj):
                picture = pikepdf.PdfImage(image).as_pil_image().convert("RGB")
                if picture.width < 200:
                    continue
                apart = {name: difference(picture, it) for name, it in wanted.items()}
                near = min(apart, key=apart.get)
                tally.check(apart[near] <= MOST_MEAN, f"{pdf.name}: dE*ab {apart[near]:.2f} from {near}")
                found.add(near.rsplit(".", 1)[0].removesuffix("-photo"))
    tally.check(found == set(PROFILES), f"{pdf.name} shows {sorted(found)}")


def reached(page):
    seen, waiting = set(), [page.get("/Resources")]
    while waiting:
        resources = waiting.pop()
        for _, thing in (resources or {}).get("/XObject", {}).items():
            if thing.objgen in seen:
                continue
            seen.add(thing.objgen)
            if thing.get("/Subtype") == "/Image":
                yield thing
            else:
                waiting.append(thing.get("/Resources"))


def main(tourier, work):
    tally, folder = Tally(), Path(work) / "colours"
    shutil.rmtree(folder, ignore_errors=True)
    was = colours((900, 600))
    names = [f"{name}{kind}" for name in PROFILES for kind in (".png", "-photo.jpg")]
    # The test itself: what is left as it is would be seen.
    for name in ("display-p3", "adobe-rgb"):
        tally.check(difference(was, turned(was, name)) >= LEAST_UNTURNED, f"{name} is hardly another colour")
    tally.check(levels(was, turned(was, "srgb")) <= 1, "the other engine moves sRGB to sRGB")
    course(tourier, folder / "content", names)
    media = folder / "content" / "media"
    media.mkdir()
    for name in names:
        options = {"quality": 97, "subsampling": 0} if name.endswith("jpg") else {}
        was.save(media / name, icc_profile=PROFILES[name.rsplit(".", 1)[0].removesuffix("-photo")], **options)
    site = folder / "site"
    subprocess.run([tourier, "publish", "--content", folder / "content", "--to", site, "--quiet"], check=True)
    for name in names:
        on_pages(tally, site, name, was)
    on_paper(tally, site / "recipes/soft-rolls/soft-rolls-student-metric-a4.pdf", was, names)
    return tally.end()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
