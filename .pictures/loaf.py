"""A tin loaf with its first slice cut, and a round loaf, as meshes."""
import numpy as np
from PIL import Image, ImageDraw, ImageFilter
from crescent import mesh, noise

def outline(nt, rng):
    """A loaf across: the tin's straight sides, the top that rose over its edge."""
    theta = np.linspace(0, 2 * np.pi, nt, endpoint=False)
    c, s = np.cos(theta), np.sin(theta)
    power = 5.0
    base = (np.abs(c) ** power + np.abs(s) ** power) ** (-1 / power)
    x, y = base * c * 5.2, base * s * 4.6
    crown = np.clip(s, 0, 1)
    round_ = np.stack([6.0 * c * (1 + 0.03 * np.sin(2 * theta)), 7.6 * s], 1)
    mix = np.clip((s - 0.28) / 0.3, 0, 1)[:, None]
    mix = mix * mix * (3 - 2 * mix)
    flat = np.stack([x * (1 + 0.035 * s), y], 1)
    return (1 - mix) * flat + mix * round_ + [0, 4.6], crown

def tin_loaf(name, start, end, seed, crumb, rounded=True):
    rng = np.random.default_rng(seed)
    nx, nt = 420, 700
    x = np.linspace(start, end, nx)[:, None]
    across, crown = outline(nt, rng)
    half = 10.5
    taper = np.sqrt(np.clip(1 - np.abs(x / half) ** 14, 0.0, 1)) if rounded else np.ones_like(x)
    dome = 1 + 0.05 * np.cos(x / half * np.pi / 2) * crown
    rough = 0.05 * noise((nx, nt), (12, 14), rng) + 0.02 * noise((nx, nt), (60, 80), rng) + 0.010 * noise((nx, nt), (200, 240), rng)
    wide = across[None, :, 0] * (0.25 + 0.75 * taper) * (1 + 0.012 * noise((nx, nt), (5, 6), rng)) + rough * np.cos(np.linspace(0, 2 * np.pi, nt))
    high = (4.6 + (across[None, :, 1] - 4.6) * (0.3 + 0.7 * taper)) * dome + rough
    high = np.maximum(high, 0)
    px = np.broadcast_to(x, (nx, nt))
    heat = 0.25 + 0.75 * np.clip((high - 5.6) / 4.0, 0, 1) + 0.18 * noise((nx, nt), (6, 8), rng) + 0.1 * noise((nx, nt), (40, 50), rng) + 0.06 * noise((nx, nt), (160, 200), rng)
    heat -= 0.55 * np.exp(-((high - 6.0) / 0.5) ** 2) * (0.5 + 0.5 * noise((nx, nt), (20, 24), rng))
    heat = np.clip(heat, 0, 1)[..., None]
    pale, gold, dark = np.array((0.88, 0.68, 0.40)), np.array((0.72, 0.43, 0.16)), np.array((0.42, 0.20, 0.06))
    tone = np.where(heat < 0.5, pale + (gold - pale) * heat * 2, gold + (dark - gold) * (heat * 2 - 1))
    Image.fromarray((np.clip(tone, 0, 1) * 255).astype(np.uint8)).save(f'{name}.png')
    mesh(name, px, wide, high)
    # mesh() takes (x, y, z) as along, across, up.
    if crumb:
        rings = np.linspace(1, 0, 60)[:, None]
        mid = np.array([wide[-1].mean(), 5.0])
        cy = mid[0] + (wide[-1][None, :] - mid[0]) * rings
        cz = mid[1] + (high[-1][None, :] - mid[1]) * rings
        cx = np.full_like(cy, end) + 0.02 * noise(cy.shape, (30, 60), rng) * (rings < 0.97)
        mesh(name + '_cut', cx, cy, cz)

def crumb(name, seed, tone, hole, size=1100, tight=1.0):
    """The cut face: holes of many sizes, drawn into the rings of the cap by its own angles."""
    rng = np.random.default_rng(seed)
    flat = Image.new('RGB', (size, size), tuple(int(255 * c) for c in tone))
    draw = ImageDraw.Draw(flat)
    shade = np.array(tone)
    for count, low, high, depth in ((5200, 1, 3, .06), (2600, 2, 5, .10), (900, 4, 9, .15), (int(160 / tight), 7, 15, .2)):
        for _ in range(count):
            x, y = rng.uniform(0, size, 2)
            w, h = rng.uniform(low, high), rng.uniform(low, high) * 0.7
            dark = tuple(int(255 * c) for c in np.clip(shade * (1 - depth * rng.uniform(.5, 1)), 0, 1))
            light = tuple(int(255 * c) for c in np.clip(shade * 1.05, 0, 1))
            draw.ellipse((x - w - 1, y - h - 1, x + w + 1, y + h + 1), fill=light)
            draw.ellipse((x - w, y - h + .8, x + w, y + h + .8), fill=dark)
    flat = np.asarray(flat.filter(ImageFilter.GaussianBlur(0.9)), float) / 255
    flat *= 1 + 0.05 * noise((size, size), (9, 9), rng)[..., None]
    # Into the coordinates of the cap: row = ring from the crust inwards, column = angle.
    nx, nt = 500, 1400
    ring = np.linspace(1, 0, nx)[:, None]; theta = np.linspace(0, 2 * np.pi, nt, endpoint=False)[None, :]
    # The cap is about as the outline: taken from it, so that holes stay round.
    across, _ = outline(nt, rng)
    ox = across[None, :, 0] * ring; oy = 5 + (across[None, :, 1] - 5) * ring
    u = np.clip((ox / 14 + .5) * size, 0, size - 1).astype(int); v = np.clip((oy / 14) * size, 0, size - 1).astype(int)
    face = flat[v, u]
    edge = np.exp(-(1 - ring) * 5.6 / 0.16)[..., None]
    crust = np.array((0.50, 0.27, 0.09))
    face = face * (1 - edge) + crust * edge
    Image.fromarray((np.clip(face, 0, 1) * 255).astype(np.uint8)).save(f'{name}.png')

def round_loaf(name, seed):
    rng = np.random.default_rng(seed)
    nx, nt = 620, 900
    ring = np.linspace(0.002, 1, nx)[:, None] ** 1.3        # from the top down to the base
    theta = np.linspace(0, 2 * np.pi, nt, endpoint=False)[None, :]
    phi = ring * np.pi
    radius = 11.5 * np.sin(phi) ** 0.62 * (1 + 0.015 * noise((nx, nt), (6, 8), rng))
    high = 3.6 + np.where(phi < np.pi / 2, 5.4, 3.7) * np.sign(np.cos(phi)) * np.abs(np.cos(phi)) ** 0.9
    x, y = radius * np.cos(theta), radius * np.sin(theta)
    # Seen from above, so that nothing meets in the middle of the top.
    flat = 1000
    def seen(cells, seed):
        field = noise((flat, flat), cells, np.random.default_rng(seed))
        way = phi / np.pi * 0.62                       # as far as on the crust, so that sides are not drawn long
        u = np.clip((way * np.cos(theta) + .5) * flat, 0, flat - 1).astype(int)
        v = np.clip((way * np.sin(theta) + .5) * flat, 0, flat - 1).astype(int)
        return field[v, u]
    n = seen((9, 9), 21) + 0.5 * seen((20, 20), 22) + 0.2 * seen((60, 60), 23)
    crack = np.exp(-(n / 0.07) ** 2) * np.clip((np.cos(phi) + 0.02) * 2.2, 0, 1)
    flour = seen((34, 34), 24) * 0.5 + seen((170, 170), 25) * 0.6
    white = np.clip(0.50 + 0.5 * flour + 0.5 * np.cos(phi) - 0.2, 0, 1) * (1 - crack) * (phi < 1.9)
    grain = 0.03 * seen((260, 260), 26)
    lift = -0.30 * crack + grain + 0.08 * seen((20, 20), 27)
    norm = np.stack([np.sin(phi) * np.cos(theta), np.sin(phi) * np.sin(theta), np.cos(phi) * np.ones_like(theta)])
    x, y, z = x + lift * norm[0], y + lift * norm[1], high + lift * norm[2]
    z = np.maximum(z, 0)
    brown = np.array((0.36, 0.20, 0.09)) * (1 + 0.25 * noise((nx, nt), (30, 30), rng))[..., None]
    inner = np.array((0.30, 0.17, 0.08))
    tone = brown * (1 - crack[..., None]) + inner * crack[..., None]
    tone = tone * (1 - 0.86 * white[..., None]) + np.array((0.93, 0.90, 0.84)) * 0.86 * white[..., None]
    Image.fromarray((np.clip(tone, 0, 1) * 255).astype(np.uint8)).save(f'{name}.png')
    mesh(name, x, y, z)

if __name__ == '__main__':
    tin_loaf('loaf_whole', -10.5, 4.4, 3, True)
    tin_loaf('loaf_slice', 0, 1.3, 4, True, rounded=False)
    crumb('crumb', 5, (0.97, 0.90, 0.74), 1)
    round_loaf('round_loaf', 8)
