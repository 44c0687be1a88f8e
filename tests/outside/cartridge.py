"""The package for learning platforms, taken apart.

    python3 cartridge.py SITE

Source: IMS Common Cartridge 1.3 (1EdTech): one `imsmanifest.xml` at the root, its
namespaces and version, one organization with structure `rooted-hierarchy` and one root
item, identifiers given once, every reference to something there, every file named in a
resource and there, web links in their own form. Its rules are written out here. Read with Python's own zip
and XML.
"""

import posixpath
import re
import sys
import zipfile
from pathlib import Path
from urllib.parse import unquote, urlsplit
from xml.etree import ElementTree

import html5lib

from tally import Tally

CP = "{http://www.imsglobal.org/xsd/imsccv1p3/imscp_v1p1}"
LOM = "{http://ltsc.ieee.org/xsd/imsccv1p3/LOM/manifest}"
LINK = "{http://www.imsglobal.org/xsd/imsccv1p3/imswl_v1p3}"
NAME = re.compile(r"[A-Za-z_][\w.-]*")
TYPES = {"webcontent", "imswl_xmlv1p3"}


def whole(package, tally):
    """The package's files: named safely, none damaged, none twice."""
    names = package.namelist()
    tally.check(package.testzip() is None, "a file is damaged")
    tally.check(len(set(names)) == len(names), "a file is there twice")
    safe = all(not n.startswith("/") and ".." not in n and "\\" not in n for n in names)
    tally.check(safe, "a name leads out of the package")
    years = {package.getinfo(name).date_time[0] for name in names}
    tally.check(years == {1980}, f"the clock is in the package: {years}")
    return names


def head(manifest, tally):
    tally.check(manifest.tag == f"{CP}manifest", f"root {manifest.tag}")
    tally.check(manifest.findtext(f"{CP}metadata/{CP}schema") == "IMS Common Cartridge", "schema")
    version = manifest.findtext(f"{CP}metadata/{CP}schemaversion")
    tally.check(version == "1.3.0", f"version {version}")
    title = manifest.findtext(f"{CP}metadata/{LOM}lom/{LOM}general/{LOM}title/{LOM}string")
    tally.check(title, "no title")
    order = [child.tag for child in manifest]
    wanted = [f"{CP}metadata", f"{CP}organizations", f"{CP}resources"]
    tally.check(order == wanted, f"the parts stand as {order}")
    given = [e.attrib["identifier"] for e in manifest.iter() if "identifier" in e.attrib]
    tally.check(len(set(given)) == len(given), "an identifier is given twice")
    tally.check(all(NAME.fullmatch(name) for name in given), "an identifier is none")


def tree(manifest, resources, tally):
    """The lessons: one tree, each leaf with a resource, each branch with a title."""
    found = manifest.findall(f"{CP}organizations/{CP}organization")
    tally.check(len(found) == 1, f"{len(found)} organizations")
    tally.check(found[0].get("structure") == "rooted-hierarchy", "structure")
    roots = found[0].findall(f"{CP}item")
    tally.check(len(roots) == 1, f"{len(roots)} roots")
    tally.check(roots[0].find(f"{CP}title") is None, "the root item has a title")
    for item in roots[0].iter(f"{CP}item"):
        if item is roots[0]:
            continue
        name, to = item.get("identifier"), item.get("identifierref")
        tally.check(item.findtext(f"{CP}title"), f"{name} has no title")
        leaf = item.find(f"{CP}item") is None
        tally.check((to in resources) if leaf else to is None, f"{name} leads to {to}")


def contents(package, resources, names, tally):
    """Every file of the package in a resource, and the other way round."""
    listed = []
    for name, resource in resources.items():
        kind, files = resource.get("type"), resource.findall(f"{CP}file")
        tally.check(kind in TYPES, f"{name} is of type {kind}")
        listed += [file.get("href") for file in files]
        href = resource.get("href")
        tally.check(href is None or href == files[0].get("href"), f"{name} begins at {href}")
        for need in resource.findall(f"{CP}dependency"):
            tally.check(need.get("identifierref") in resources, f"{name} needs what is not there")
        if kind == "imswl_xmlv1p3":
            link = ElementTree.fromstring(package.read(files[0].get("href")))
            url = link.find(f"{LINK}url")
            sound = link.tag == f"{LINK}webLink" and link.findtext(f"{LINK}title")
            tally.check(sound and url.get("href").startswith("http"), f"{name} is no link")
    tally.check(sorted(listed) == sorted(set(names) - {"imsmanifest.xml"}), "files and resources differ")


def pages(package, names, tally):
    """Every page of the package leads only to what is in it, or to the open web."""
    for name in (n for n in names if n.endswith(".html")):
        page = html5lib.parse(package.read(name), namespaceHTMLElements=False)
        for element in page.iter():
            for key in ("href", "src"):
                parts = urlsplit(element.get(key) or "") if isinstance(element.tag, str) else None
                if not parts or parts.scheme or not parts.path:
                    continue
                to = posixpath.normpath(posixpath.join(posixpath.dirname(name), unquote(parts.path)))
                tally.check(to in names, f"{name} leads to {to}, which is not there")


def main(folder):
    tally = Tally()
    for file in sorted(Path(folder).rglob("*.imscc")):
        with zipfile.ZipFile(file) as package:
            names = whole(package, tally)
            tally.check(names[0] == "imsmanifest.xml", f"{names[0]} comes first")
            manifest = ElementTree.fromstring(package.read("imsmanifest.xml"))
            head(manifest, tally)
            found = manifest.findall(f"{CP}resources/{CP}resource")
            resources = {resource.get("identifier"): resource for resource in found}
            tree(manifest, resources, tally)
            contents(package, resources, names, tally)
            pages(package, names, tally)
    return tally.end()


if __name__ == "__main__":
    sys.exit(main(*sys.argv[1:]))
