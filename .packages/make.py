#!/usr/bin/env python3
"""Makes what people without a compiler can have, from the program that was built.

    python3 .packages/make.py [--program target/release/tourier] [--to target/packages]

    tourier-VERSION-ARCH-linux.tar.gz    program, manual, completions, licences, a small course
    tourier_VERSION_ARCH.deb             a Debian package
    tourier-VERSION-...whl               a Python wheel that carries the program
    container/                           a Containerfile and what it copies

Needs `strip` and `objdump` (binutils), `dpkg-deb`, the Python package `wheel`, and
`cargo-bundle-licenses`, which collects the notices of all dependencies from their sources.
The same program and the same commit make the same bytes. The oldest C library on which the
packages run is read from the program; a program for older systems comes from building on one.
"""

import argparse
import gzip
import io
import json
import os
import platform
import re
import shutil
import subprocess
import sys
import tarfile
import tomllib
from pathlib import Path

ROOT = Path(__file__).resolve().parent.parent
CRATE = tomllib.loads((ROOT / "Cargo.toml").read_text(encoding="utf-8"))["package"]
NAME, VERSION = CRATE["name"], CRATE["version"]
ABOUT = "checks, scales, plans, publishes and prints the recipes of people who teach baking"
# Where each shell looks for completions below /usr/share.
SHELLS = {
    "bash": "bash-completion/completions/tourier",
    "zsh": "zsh/vendor-completions/_tourier",
    "fish": "fish/vendor_completions.d/tourier.fish",
}
DEBIAN = {"x86_64": "amd64", "aarch64": "arm64"}


def ran(*command, **more):
    """What a command printed."""
    return subprocess.run(command, check=True, capture_output=True, **more).stdout


def moment():
    """The time that everything made bears: that of the last commit, or as told."""
    told = os.environ.get("SOURCE_DATE_EPOCH")
    return int(told or ran("git", "-C", str(ROOT), "log", "-1", "--format=%ct"))


def oldest_c_library(program):
    """The newest version of the C library that the program asks for, as `(2, 35)`."""
    asked = ran("objdump", "-T", str(program)).decode()
    return max(tuple(map(int, found.split("."))) for found in re.findall(r"GLIBC_([\d.]+)", asked))


def notices(to):
    """The licence texts of all that the program is built from."""
    listed = Path(to).with_suffix(".json")
    subprocess.run(["cargo", "bundle-licenses", "--format", "json", "--output", str(listed)],
                   check=True, cwd=ROOT, stdout=subprocess.DEVNULL, stderr=subprocess.DEVNULL)
    found = json.loads(listed.read_text(encoding="utf-8"))["third_party_libraries"]
    listed.unlink()
    editor = ROOT / "src/preview/desk/editor/editor.licences.txt"
    # A text that many packages share is printed once, behind the names of all of them.
    texts = {}
    for package in found:
        name = f"{package['package_name']} {package['package_version']}"
        for licence in package["licenses"]:
            text = licence["text"].strip()
            key = (licence["license"], "" if text == "NOT FOUND" else text)
            texts.setdefault(key, []).append(name)
    parts = ["What tourier is built from, and the terms of each.\n"]
    for (licence, text), names in sorted(texts.items()):
        body = text or "(the package states these terms and brings no text of its own)"
        parts.append(f"{'=' * 78}\n{licence}: {', '.join(sorted(set(names)))}\n\n{body}\n")
    parts.append(f"{'=' * 78}\nThe editor of the desk\n\n{editor.read_text(encoding='utf-8')}")
    to.write_text("\n".join(parts), encoding="utf-8")


def tree(program, to):
    """Everything that the packages hold, once."""
    shutil.rmtree(to, ignore_errors=True)
    to.mkdir(parents=True)
    own = to / "tourier"
    shutil.copy(program, own)
    ran("strip", str(own))
    own.chmod(0o755)
    (to / "tourier.1").write_bytes(ran(str(own), "manual"))
    (to / "completions").mkdir()
    for shell, place in SHELLS.items():
        (to / "completions" / Path(place).name).write_bytes(ran(str(own), "completions", shell))
    shutil.copy(ROOT / "README.md", to)
    licences = to / "licences"
    licences.mkdir()
    for text in [*(ROOT / ".licences").glob("*.txt"), *(ROOT / "themes/default/fonts").glob("OFL-*.txt")]:
        shutil.copy(text, licences)
    notices(to / "NOTICES.txt")
    ran(str(own), "--quiet", "start", "course", cwd=to)
    (to / ".gitignore").unlink(missing_ok=True)


def packed(folder, name, when):
    """A folder as a compressed archive below a folder `name`."""
    def plain(entry):
        entry.uid = entry.gid = 0
        entry.uname = entry.gname = "root"
        entry.mtime = when
        entry.mode = 0o755 if entry.isdir() or entry.mode & 0o100 else 0o644
        return entry

    bytes_ = io.BytesIO()
    with tarfile.open(fileobj=bytes_, mode="w", format=tarfile.PAX_FORMAT) as archive:
        archive.add(folder, name, filter=plain)
    return gzip.compress(bytes_.getvalue(), mtime=when)


def laid(folder, places):
    """Lays files of the tree at their places in a Debian package."""
    for place, source, squeezed in places:
        to = folder / place
        to.parent.mkdir(parents=True, exist_ok=True)
        data = source.read_bytes()
        to.write_bytes(gzip.compress(data, mtime=0) if squeezed else data)
        to.chmod(0o755 if place == "usr/bin/tourier" else 0o644)


def debian(have, to, when):
    """A package for Debian and its kin."""
    folder = to / "deb"
    shutil.rmtree(folder, ignore_errors=True)
    doc = "usr/share/doc/tourier"
    laid(folder, [
        ("usr/bin/tourier", have / "tourier", False),
        ("usr/share/man/man1/tourier.1.gz", have / "tourier.1", True),
        (f"{doc}/README.md.gz", have / "README.md", True),
        (f"{doc}/NOTICES.gz", have / "NOTICES.txt", True),
        *((f"usr/share/{place}", have / "completions" / Path(place).name, False)
          for place in SHELLS.values()),
        *((f"{doc}/licences/{text.name}", text, False) for text in (have / "licences").iterdir()),
        *((f"{doc}/examples/{text.relative_to(have)}", text, False)
          for text in (have / "course").rglob("*") if text.is_file()),
    ])
    (folder / doc / "copyright").write_text(COPYRIGHT, encoding="utf-8")
    size = sum(file.stat().st_size for file in folder.rglob("*") if file.is_file()) // 1024
    libc = ".".join(map(str, oldest_c_library(have / "tourier")))
    arch = DEBIAN[platform.machine()]
    (folder / "DEBIAN").mkdir()
    (folder / "DEBIAN/control").write_text(
        f"Package: {NAME}\nVersion: {VERSION}\nArchitecture: {arch}\nSection: utils\n"
        f"Priority: optional\nMaintainer: the founders of tourier <founders@tourier.example>\n"
        f"Installed-Size: {size}\nDepends: libc6 (>= {libc}), libgcc-s1\n"
        f"Description: {ABOUT}\n {CRATE['description']}\n", encoding="utf-8")
    for path in folder.rglob("*"):
        if path.is_dir():
            path.chmod(0o755)
    made = to / f"{NAME}_{VERSION}_{arch}.deb"
    ran("dpkg-deb", "--build", "--root-owner-group", str(folder), str(made),
        env={**os.environ, "SOURCE_DATE_EPOCH": str(when)})
    shutil.rmtree(folder)
    return made


COPYRIGHT = """Format: https://www.debian.org/doc/packaging-manuals/copyright-format/1.0/
Upstream-Name: tourier

Files: *
Copyright: the founders of tourier
License: MIT or Apache-2.0
 Both texts stand in licences/ beside this file, with those of the typefaces;
 the terms of all that the program is built from in NOTICES.gz.
"""


def wheel(have, to, when):
    """A wheel: `pip install FILE` puts the command where Python's own stand."""
    from wheel.wheelfile import WheelFile
    major, minor = oldest_c_library(have / "tourier")
    tag = f"py3-none-manylinux_{major}_{minor}_{platform.machine()}"
    stem = f"{NAME}-{VERSION}"
    made = to / f"{stem}-{tag}.whl"
    files = {
        f"{stem}.data/scripts/tourier": have / "tourier",
        **{f"{stem}.dist-info/licenses/{text.name}": text for text in (have / "licences").iterdir()},
        f"{stem}.dist-info/licenses/NOTICES.txt": have / "NOTICES.txt",
    }
    metadata = (f"Metadata-Version: 2.4\nName: {NAME}\nVersion: {VERSION}\nSummary: {ABOUT}\n"
                f"License-Expression: {CRATE['license']}\n"
                "Description-Content-Type: text/markdown\n\n"
                + (have / "README.md").read_text(encoding="utf-8"))
    said = f"Wheel-Version: 1.0\nGenerator: tourier\nRoot-Is-Purelib: false\nTag: {tag}\n"
    os.environ["SOURCE_DATE_EPOCH"] = str(max(when, 315_532_800))
    with WheelFile(made, "w") as archive:
        for place, source in sorted(files.items()):
            archive.write(source, place)
        archive.writestr(f"{stem}.dist-info/METADATA", metadata)
        archive.writestr(f"{stem}.dist-info/WHEEL", said)
    return made


def container(have, to):
    """What a container is built from."""
    folder = to / "container"
    shutil.rmtree(folder, ignore_errors=True)
    folder.mkdir()
    shutil.copy(ROOT / ".packages/Containerfile", folder)
    for name in ["tourier", "README.md", "NOTICES.txt"]:
        shutil.copy(have / name, folder)
    shutil.copytree(have / "licences", folder / "licences")
    return folder


def main():
    """Makes the four, and says their sizes."""
    options = argparse.ArgumentParser(description=__doc__.splitlines()[0])
    options.add_argument("--program", default=ROOT / "target/release/tourier", type=Path)
    options.add_argument("--to", default=ROOT / "target/packages", type=Path)
    told = options.parse_args()
    told.to.mkdir(parents=True, exist_ok=True)
    when = moment()
    stem = f"{NAME}-{VERSION}-{platform.machine()}-linux"
    have = told.to.resolve() / stem
    tree(told.program.resolve(), have)
    archive = told.to / f"{stem}.tar.gz"
    archive.write_bytes(packed(have, stem, when))
    made = [archive, debian(have, told.to.resolve(), when), wheel(have, told.to, when)]
    container(have, told.to)
    shutil.rmtree(have)
    for file in made:
        print(f"{file.stat().st_size / 1e6:7.1f} MB  {file.name}")
    print(f"            container/ ({NAME} and its Containerfile)")
    return 0


if __name__ == "__main__":
    sys.exit(main())
