"""The ready-made settings for web servers: both servers serve the published folder with them.

    python3 hosting.py SITE WORK

Starts nginx and lighttpd, as Debian has them, with the files in `.hosting/` and nothing
else, and asks for one file of each kind: what kind it is said to be, how long it may be kept,
that whoever has it is told so without its bytes, what a page may load, that a page that is not
there is answered with the course's own, and that notes of ours are not given out. A server that is not
installed is fetched by its package's name into WORK, where the system has `apt-get`; where
that does not do, it is said which one is missing. Sources: RFC 9110 (13.1, conditional
requests), RFC 9111 (5.2.2, `no-cache`), Content Security Policy Level 3 (several policies:
all hold), IANA's media types.
"""

import http.client
import re
import shutil
import socket
import subprocess
import sys
import time
from pathlib import Path

from tally import Tally

OWN = Path(__file__).resolve().parents[2] / ".hosting"
# What each kind of file is said to be; two where two names are in use.
KINDS = {
    ".html": ["text/html"],
    ".css": ["text/css"],
    ".js": ["text/javascript", "application/javascript"],
    ".xml": ["text/xml", "application/xml"],
    ".webmanifest": ["application/manifest+json"],
    ".svg": ["image/svg+xml"],
    ".png": ["image/png"],
    ".jpg": ["image/jpeg"],
    ".woff2": ["font/woff2"],
    ".pdf": ["application/pdf"],
    ".ics": ["text/calendar"],
    ".csv": ["text/csv"],
    ".json": ["application/json"],
    ".imscc": ["application/zip"],
}
TEXTS = (".html", ".css", ".js")
PACKAGES = {"nginx": ["nginx", "nginx-common"], "lighttpd": ["lighttpd"]}


def fetched(name, work):
    """The folder with a server's packages laid out in it; `None` where they are not to be had."""
    root = work / f"{name}-root"
    root.mkdir(parents=True)
    if not shutil.which("apt-get"):
        return None
    got = subprocess.run(["apt-get", "download", *PACKAGES[name]], cwd=root, capture_output=True)
    files = list(root.glob("*.deb"))
    if got.returncode != 0 or not files:
        return None
    for file in files:
        subprocess.run(["dpkg-deb", "-x", file, root], check=True)
    return root


def found(name, work):
    """The program, and the folder that its own files lie below."""
    there = shutil.which(name) or shutil.which(name, path="/usr/sbin:/usr/local/sbin")
    if there:
        return Path(there), Path("/")
    root = fetched(name, work)
    program = root and root / "usr/sbin" / name
    return (program, root) if program and program.is_file() else (None, None)


def nginx(program, root, site, work, port):
    settings = work / "nginx.conf"
    temporary = "".join(
        f"{kind}_temp_path {work}/{kind};\n"
        for kind in ("client_body", "proxy", "fastcgi", "uwsgi", "scgi")
    )
    settings.write_text(
        f"daemon off;\nmaster_process off;\npid {work}/nginx.pid;\nerror_log {work}/nginx.log;\n"
        f"events {{ }}\nhttp {{\n{temporary}access_log off;\ninclude {root}/etc/nginx/mime.types;\n"
        f"server {{\nlisten 127.0.0.1:{port};\nroot {site};\ninclude {OWN}/nginx.conf;\n}}\n}}\n"
    )
    return [program, "-p", work, "-e", work / "nginx.log", "-c", settings]


def lighttpd(program, root, site, work, port):
    settings = work / "lighttpd.conf"
    settings.write_text(
        f'server.bind = "127.0.0.1"\nserver.port = {port}\nserver.errorlog = "{work}/lighttpd.log"\n'
        f'server.document-root = "{site}"\ninclude "{OWN}/lighttpd.conf"\n'
    )
    return [program, "-D", "-f", settings, "-m", root / "usr/lib/lighttpd"]


def free_port():
    with socket.socket() as one:
        one.bind(("127.0.0.1", 0))
        return one.getsockname()[1]


def asked(port, path, **headers):
    """Status, headers and bytes of an answer."""
    call = http.client.HTTPConnection("127.0.0.1", port, timeout=10)
    call.request("GET", path, headers=headers)
    answer = call.getresponse()
    return answer.status, {key.lower(): value for key, value in answer.getheaders()}, answer.read()


def up(port, server):
    """Waits until the server answers; false where it ends or stays silent."""
    for _ in range(100):
        if server.poll() is not None:
            return False
        try:
            asked(port, "/")
            return True
        except OSError:
            time.sleep(0.05)
    return False


def samples(site):
    """One file of each kind that the site has."""
    found = {}
    for file in sorted(site.rglob("*")):
        if file.is_file() and not file.name.startswith("."):
            found.setdefault(file.suffix, file)
    return found


def policy(site):
    """What the pages say themselves that they load."""
    page = (site / "index.html").read_text(encoding="utf-8").replace("&#39;", "'").replace("&#x27;", "'")
    return re.search(r'http-equiv="Content-Security-Policy" content="([^"]+)"', page)[1]


def look_at(tally, name, site, port):
    """Asks for one file of each kind, and for what must not be given."""
    own = policy(site)
    for suffix, file in samples(site).items():
        path = f"/{file.relative_to(site).as_posix()}"
        status, headers, body = asked(port, path)
        said = f"{name} {path}"
        tally.check(status == 200 and body == file.read_bytes(), f"{said}: not its bytes ({status})")
        kind = headers.get("content-type", "")
        wanted = KINDS.get(suffix)
        tally.check(not wanted or kind.split(";")[0] in wanted, f"{said}: is said to be {kind}")
        tally.check(suffix not in TEXTS or "utf-8" in kind.lower(), f"{said}: {kind} without its letters")
        tally.check(headers.get("x-content-type-options") == "nosniff", f"{said}: may be guessed at")
        rules = headers.get("content-security-policy", "")
        tally.check(rules.startswith(own) and "frame-ancestors" in rules, f"{said}: may load {rules!r}")
        kept = headers.get("cache-control", "")
        long = "max-age=2592000" in kept
        tally.check(long if suffix == ".woff2" else kept == "no-cache", f"{said}: kept by {kept!r}")
        # Told to be the same without its bytes, by its tag and by its date.
        for ask, mark in (("If-None-Match", "etag"), ("If-Modified-Since", "last-modified")):
            again, _, body = asked(port, path, **{ask: headers.get(mark, "")})
            tally.check(again == 304 and body == b"", f"{said}: {again} for one that has it ({mark})")
    for path in ("/", "/recipes/" + next(site.glob("recipes/*/index.html")).parent.name + "/"):
        status, _, body = asked(port, path)
        page = site / path.strip("/") / "index.html"
        tally.check(status == 200 and body == page.read_bytes(), f"{name} {path}: {status}")
    status, headers, body = asked(port, "/no/such/page")
    own = (site / "404.html").read_bytes()
    tally.check(status == 404 and body == own, f"{name}: {status} for a page that is not there")
    for note in ("/.tourier.json", "/../etc/hostname"):
        status, _, body = asked(port, note)
        tally.check(status in (400, 403, 404), f"{name} {note}: given out ({status})")


def main(site, work):
    tally, site, work = Tally(), Path(site).resolve(), Path(work).resolve() / "hosting"
    for name, command in (("nginx", nginx), ("lighttpd", lighttpd)):
        room = work / name
        room.mkdir(parents=True)
        program, root = found(name, room)
        tally.check(program, f"{name} is not here, and apt-get does not bring {' and '.join(PACKAGES[name])}")
        if not program:
            continue
        port = free_port()
        server = subprocess.Popen([str(part) for part in command(program, root, site, room, port)],
                                  stdout=subprocess.PIPE, stderr=subprocess.STDOUT)
        try:
            answers = up(port, server)
            log = (room / f"{name}.log").read_text() if (room / f"{name}.log").exists() else ""
            tally.check(answers, f"{name} does not begin: {log[-600:]}")
            if answers:
                look_at(tally, name, site, port)
        finally:
            server.terminate()
            server.wait()
    return tally.end()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
