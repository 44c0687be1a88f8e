"""The triangle half rolled up: the roll at its base, the rest lying flat before it."""
import numpy as np
from PIL import Image
from crescent import crescent, mesh, noise

def flat(name, seed, half=3.7, long=15.5, thick=0.42):
    rng = np.random.default_rng(seed)
    ns, nu = 420, 260
    s = np.linspace(0, 1, ns)[:, None]
    u = np.linspace(-1, 1, nu)[None, :]
    wide = half * (1 - s ** 1.02) + 0.12
    wide = wide * np.sqrt(np.clip(1 - np.clip((s - 0.975) / 0.025, 0, 1) ** 2, 0, 1))
    x = wide * u * (1 + 0.012 * noise((ns, nu), (7, 3), rng)) + 0.05 * noise((ns, 1), (6, 1), rng)
    y = np.broadcast_to(long * s, (ns, nu))
    edge = np.clip(1 - np.abs(u) ** 14, 0, 1) ** 0.5 * np.clip(1 - np.clip(s, 0, 1) ** 60, 0, 1) ** .5
    grain = noise((ns, nu), (60, 40), rng)
    z = thick * edge * (1 + 0.05 * noise((ns, nu), (12, 6), rng)) + 0.012 * grain + 0.01 * noise((ns, nu), (150, 100), rng)
    tone = np.array((0.95, 0.88, 0.73)) * (1 + 0.03 * noise((ns, nu), (9, 6), rng) + 0.015 * grain)[..., None]
    rim = np.clip((np.abs(u) - 0.93) / 0.07, 0, 1)[..., None] * np.ones((ns, 1, 1))
    lines = 0.5 + 0.5 * noise((ns, nu), (4, 220), rng)[..., None]
    tone = tone * (1 - 0.10 * rim * lines)
    flour = np.clip(noise((ns, nu), (90, 60), rng) + 0.6 * noise((ns, nu), (20, 14), rng) - 0.5, 0, 1)[..., None]
    tone = tone * (1 - 0.6 * flour) + 0.97 * 0.6 * flour
    Image.fromarray((np.clip(tone, 0, 1) * 255).astype(np.uint8)).save(f'{name}.png')
    mesh(name, x, y, z, closed=False)

if __name__ == '__main__':
    crescent('rolled', 'dough', 31, length=9.4, wraps=1.9, top=1.55, tip=0.8, bend=0.02, closing=0.3)
    flat('rest', 32)
