#!/usr/bin/env python3
"""What is given to people without a compiler works where nothing of ours is.

    python3 packages.py TOURIER WORK

Makes the archive, the Debian package, the wheel and the container's folder from the program
that was built, and takes each from an empty place to a published course: the archive and
the Debian package in a root file system that holds the C library and nothing else, the wheel
by `pip` with no index. Sources: Debian Policy 4.7, 5.3 (fields of a binary package) and
12.5 (copyright); the binary distribution format of Python packages (PyPA specifications);
`dpkg-deb`, `pip` and `chroot` as referees. The container is built where an engine answers.
"""

import json
import os
import re
import shutil
import subprocess
import sys
from pathlib import Path

from licences import packages
from tally import Tally

ROOT = Path(__file__).resolve().parent.parent.parent


def ran(*command, **more):
    """A command's end and what it said."""
    done = subprocess.run([str(part) for part in command], capture_output=True, text=True, **more)
    return done.returncode, done.stdout + done.stderr


def bare_root(folder, program):
    """A root file system with the C library that the program asks for."""
    _, said = ran("ldd", program)
    for library in re.findall(r"(/\S+) \(0x", said):
        to = folder / library.lstrip("/")
        to.parent.mkdir(parents=True, exist_ok=True)
        shutil.copy(library, to)
    (folder / "home").mkdir(parents=True)
    return folder


def within(root, *command):
    """Runs a command with the folder as its root and nothing in its environment."""
    become = [] if os.geteuid() == 0 else ["unshare", "--map-root-user"]
    return ran(*become, "chroot", root, *command, env={"PATH": os.defpath + ":/usr/sbin:/sbin"})


def published(tally, what, course, site):
    """Whether the small course stands there with its pages and sheets."""
    recipes = [file.stem for file in (course / "recipes").glob("*.md")]
    tally.check(len(recipes) > 1, f"{what}: no course to begin from in {course}")
    tally.check((site / "index.html").is_file(), f"{what}: no index")
    for name in recipes:
        tally.check((site / "recipes" / name / "index.html").is_file(), f"{what}: no page of {name}")
        sheets = list(site.rglob(f"*{name}*.pdf"))
        tally.check(sheets and all(file.read_bytes()[:5] == b"%PDF-" for file in sheets),
                    f"{what}: no sheet of {name}")


def archive(tally, made, program, work):
    """Unpacked into a bare root, its own small course published."""
    root = bare_root(work / "archive", program)
    code, said = ran("tar", "--extract", "--gzip", "--file", made, "--directory", root / "home")
    tally.check(code == 0, f"archive: {said}")
    own = f"/home/{made.name.removesuffix('.tar.gz')}"
    code, said = within(root, f"{own}/tourier", "--content", f"{own}/course", "publish", "--to", "/home/site")
    tally.check(code == 0, f"archive: {said}")
    published(tally, "archive", root / own.lstrip("/") / "course", root / "home/site")
    for name in ["README.md", "NOTICES.txt", "tourier.1", "licences/MIT.txt", "completions/_tourier"]:
        tally.check((root / own.lstrip("/") / name).stat().st_size > 200, f"archive: {name}")
    return root / own.lstrip("/")


def notices(tally, text):
    """Every package that the program is built from stands among the notices."""
    for one in packages():
        tally.check(f"{one['name']} {one['version']}" in text, f"notices: nothing of {one['name']}")


def debian(tally, made, program, work):
    """Laid out as `dpkg` lays it, then a course from an empty folder."""
    root = bare_root(work / "debian", program)
    code, said = ran("dpkg-deb", "--extract", made, root)
    tally.check(code == 0, f"deb: {said}")
    fields = {name: ran("dpkg-deb", "--field", made, name)[1].strip() for name in
              ["Package", "Version", "Architecture", "Maintainer", "Description", "Depends"]}
    for name, value in fields.items():
        tally.check(value, f"deb: no field {name}")
    asked = subprocess.run(["objdump", "-T", program], capture_output=True, text=True).stdout
    newest = max(tuple(map(int, one.split("."))) for one in re.findall(r"GLIBC_([\d.]+)", asked))
    tally.check(f"libc6 (>= {'.'.join(map(str, newest))})" in fields["Depends"], f"deb: {fields['Depends']}")
    _, listed = ran("dpkg-deb", "--contents", made)
    tally.check(all(" root/root " in line for line in listed.splitlines()), "deb: an owner of its own")
    for place in ["usr/share/doc/tourier/copyright", "usr/share/man/man1/tourier.1.gz"]:
        tally.check((root / place).is_file(), f"deb: no {place}")
    for told in [["start", "/home/content"], ["--content", "/home/content", "publish", "--to", "/home/site"]]:
        code, said = within(root, "/usr/bin/tourier", *told)
        tally.check(code == 0, f"deb: {told}: {said}")
    published(tally, "deb", root / "home/content", root / "home/site")


def wheel(tally, made, work):
    """Taken in by `pip` without an index; the command that it puts there makes a course."""
    home = work / "wheel"
    code, said = ran(sys.executable, "-m", "pip", "install", "--quiet", "--no-index", "--no-deps",
                     "--root-user-action", "ignore", "--prefix", home, made)
    tally.check(code == 0, f"wheel: {said}")
    empty = work / "wheel-home"
    empty.mkdir()
    own = home / "bin/tourier"
    for told in [["start", "content"], ["publish"]]:
        code, said = ran(own, *told, cwd=empty, env={})
        tally.check(code == 0, f"wheel: {told}: {said}")
    published(tally, "wheel", empty / "content", empty / "output")


def container(tally, folder):
    """All that is copied is there; built and run where an engine answers."""
    lines = (folder / "Containerfile").read_text(encoding="utf-8").splitlines()
    for line in lines:
        if line.startswith("COPY "):
            for source in line.split()[1:-1]:
                tally.check((folder / source).exists(), f"container: no {source}")
    engine = next((one for one in ["podman", "docker"]
                   if shutil.which(one) and ran(one, "info")[0] == 0), None)
    if engine is None:
        print("  no container engine answers here: the Containerfile was read, not run")
        return
    code, said = ran(engine, "build", "--tag", "tourier-check", folder, "--file", folder / "Containerfile")
    tally.check(code == 0, f"container: {said}")
    code, said = ran(engine, "run", "--rm", "tourier-check", "--version")
    tally.check(code == 0 and said.startswith("tourier "), f"container: {said}")


def crate(tally):
    """The crate can be packed, and asks for no older Rust than its dependencies do."""
    code, said = ran("cargo", "package", "--list", "--allow-dirty", "--offline", cwd=ROOT)
    listed = said.splitlines()
    tally.check(code == 0, f"crate: {said}")
    for name in ["src/lib.rs", "src/build.rs", "README.md", "themes/default/paper/main.typ"]:
        tally.check(name in listed, f"crate: {name} is left out")
    _, said = ran("cargo", "metadata", "--format-version", "1", "--locked", "--offline", cwd=ROOT)
    packages = json.loads(said[said.index("{"):])["packages"]
    own = next(one for one in packages if one["name"] == "tourier")
    number = lambda version: tuple(map(int, version.split(".")))[:2]
    for one in packages:
        asked = one["rust_version"]
        tally.check(asked is None or number(asked) <= number(own["rust_version"]),
                    f"crate: {one['name']} wants Rust {asked}")


def main():
    """Makes and tries all of them."""
    program, work = Path(sys.argv[1]).resolve(), Path(sys.argv[2]).resolve() / "packages"
    shutil.rmtree(work, ignore_errors=True)
    made = work / "made"
    tally = Tally()
    code, said = ran(sys.executable, ROOT / ".packages/make.py", "--program", program, "--to", made, cwd=ROOT)
    tally.check(code == 0, f"making: {said[-3000:]}")
    if code == 0:
        print(said, end="")
        unpacked = archive(tally, next(made.glob("*.tar.gz")), program, work)
        notices(tally, (unpacked / "NOTICES.txt").read_text(encoding="utf-8"))
        debian(tally, next(made.glob("*.deb")), program, work)
        wheel(tally, next(made.glob("*.whl")), work)
        container(tally, made / "container")
    crate(tally)
    return tally.end()


if __name__ == "__main__":
    sys.exit(main())
