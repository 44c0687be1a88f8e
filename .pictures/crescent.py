"""A rolled crescent as a mesh: the triangle of the recipe, wound up, bent, proofed, baked."""
import numpy as np
from PIL import Image

def noise(shape, cells, rng):
    """Smooth noise between -1 and 1 that closes around its second axis."""
    rows, columns = shape
    grid = rng.uniform(-1, 1, (cells[0] + 1, cells[1]))
    y = np.linspace(0, cells[0], rows, endpoint=False)[:, None]
    x = np.linspace(0, cells[1], columns, endpoint=False)[None, :]
    i, j = np.floor(y).astype(int), np.floor(x).astype(int)
    u, v = y - i, x - j
    u, v = u * u * (3 - 2 * u), v * v * (3 - 2 * v)
    k = (j + 1) % cells[1]
    return ((grid[i, j] * (1 - v) + grid[i, k] * v) * (1 - u)
            + (grid[np.minimum(i + 1, cells[0]), j] * (1 - v) + grid[np.minimum(i + 1, cells[0]), k] * v) * u)

CRUST = {  # valley, flank, crest
    'dough': ((0.93, 0.86, 0.70), (0.95, 0.88, 0.74), (0.96, 0.90, 0.77)),
    'pale': ((0.93, 0.82, 0.60), (0.90, 0.74, 0.46), (0.84, 0.63, 0.33)),
    'gold': ((0.90, 0.72, 0.42), (0.80, 0.54, 0.22), (0.66, 0.38, 0.12)),
    'done': ((0.80, 0.55, 0.24), (0.58, 0.30, 0.09), (0.38, 0.165, 0.045)),
    'dark': ((0.42, 0.22, 0.09), (0.20, 0.09, 0.035), (0.09, 0.04, 0.02)),
}

def crescent(name, crust, seed, length=13.5, wraps=3.3, top=2.55, tip=0.75, bend=2.5, closing=1.0):
    rng = np.random.default_rng(seed)
    nx, nt = 700, 480
    x = np.linspace(-1, 1, nx)[:, None]                  # along the roll
    theta = np.linspace(0, 2 * np.pi, nt, endpoint=False)[None, :]
    # The edges of the wound triangle: the k-th wrap is w wide where the roll has this angle.
    wobble = 0.012 * noise((nx, nt), (9, 7), rng)
    reach = np.abs(x) + wobble
    rise = np.zeros((nx, nt)); crest = np.zeros((nx, nt)); valley = np.zeros((nx, nt))
    step = (top - tip) / wraps
    edges = []
    for k in range(int(np.ceil(wraps)) + 1):
        turns = k + (theta + np.pi * 0.75) % (2 * np.pi) / (2 * np.pi)
        wide = 1.02 * (1 - closing * (turns / wraps) ** 0.92)
        edges.append(np.where(turns < wraps, wide, -1.0))
    for wide in edges:
        inside = np.clip((wide - reach) / 0.028, -30, 30)
        up = 1 / (1 + np.exp(-2.2 * inside))
        rise += np.where(wide > 0, step * up, 0)
        valley += np.where(reach > wide, np.exp(-((reach - wide) / 0.03) ** 1), 0) * (wide > 0)
        crest += np.where(reach < wide, np.exp(-(np.clip(wide - reach, 0, 9) / 0.09)), 0) * (wide > 0)
    # Each wrap bulges between its edge and the next.
    bulge = np.zeros((nx, nt))
    ordered = np.sort(np.stack([np.broadcast_to(w, (nx, nt)) for w in edges] + [np.full((nx, nt), 1.0)]), axis=0)
    for low, high in zip(ordered[:-1], ordered[1:]):
        lower = np.maximum(low, -high)
        here = (reach >= lower) & (reach < high) & (high > 0.02)
        u = np.where(here, (reach - lower) / np.maximum(high - lower, 1e-3), 0)
        bulge = np.where(here, np.sin(np.pi * np.clip(u, 0, 1)) ** 0.7, bulge)
    end = np.sqrt(np.clip(1 - np.abs(x) ** 9, 0, 1))
    radius = (tip + rise + 0.16 * bulge) * end + 0.02
    radius *= 1 + 0.03 * noise((nx, nt), (5, 4), rng)
    streak = noise((nx, nt), (160, 6), rng) * 0.55 + noise((nx, nt), (70, 5), rng) * 0.45
    radius += 0.016 * streak + 0.012 * noise((nx, nt), (60, 50), rng) + 0.02 * noise((nx, nt), (24, 20), rng)
    # Bent along an arc, flat where it stood.
    angle = bend * x / 2
    arm = length / bend
    side, high = radius * np.cos(theta), radius * np.sin(theta) * 0.86
    floor = -0.55 * top * 0.86 * (0.35 + 0.65 * (1 - np.abs(x) ** 1.6))
    high = np.where(high < floor, floor + (high - floor) * 0.12, high)
    high = high - floor + 0.02
    px = (arm + side) * np.sin(angle)
    py = (arm + side) * np.cos(angle) - arm * 0.8
    pz = np.broadcast_to(high, (nx, nt))
    # Colour: crests catch the heat, valleys stay pale, the layers show as streaks.
    valley_tone, flank_tone, crest_tone = (np.array(c) for c in CRUST[crust])
    heat = 0.62 + 0.5 * np.clip(np.sin(theta), -0.6, 1) * 0.55 + 0.2 * (bulge - 0.6) + 0.14 * streak
    heat = heat + 0.12 * noise((nx, nt), (14, 12), rng) + 0.07 * noise((nx, nt), (90, 70), rng)
    heat = heat + 0.14 * np.clip(crest, 0, 1) - 0.55 * np.clip(valley, 0, 1) + 0.22 * np.abs(x) ** 6
    heat = np.clip(heat, 0, 1)[..., None]
    tone = np.where(heat < 0.5, valley_tone + (flank_tone - valley_tone) * heat * 2,
                    flank_tone + (crest_tone - flank_tone) * (heat * 2 - 1))
    if crust == 'dark':
        tone = tone * (1 - 0.35 * np.clip(np.abs(x) ** 4, 0, 1)[..., None])
    picture = (np.clip(tone, 0, 1) * 255).astype(np.uint8)
    Image.fromarray(picture).save(f'{name}.png')
    mesh(name, px, py, pz)

def mesh(name, px, py, pz, closed=True):
    nx, nt = px.shape
    if closed:  # the seam twice, so that the picture closes
        px, py, pz = (np.concatenate([a, a[:, :1]], axis=1) for a in (px, py, pz))
        nt += 1
    points = np.stack([px, pz, py], axis=-1)
    du, dv = np.gradient(points, axis=0), np.gradient(points, axis=1)
    if closed:
        seam = (points[:, 1] - points[:, -2]) / 2
        dv[:, 0] = dv[:, -1] = seam
    normal = np.cross(du, dv)
    size = np.linalg.norm(normal, axis=-1, keepdims=True)
    normal = np.where(size > 1e-7, normal / np.maximum(size, 1e-7), np.array((0, 1, 0)))
    normal[0] = normal[0] if closed and size[0].min() > 1e-7 else normal[1]
    u = np.repeat(np.linspace(0, 1, nx)[:, None], nt, 1)
    v = np.repeat(np.linspace(0, 1, nt)[None, :], nx, 0)
    index = np.arange(nx * nt).reshape(nx, nt)
    a, b, c, d = index[:-1, :-1].ravel(), index[1:, :-1].ravel(), index[:-1, 1:].ravel(), index[1:, 1:].ravel()
    faces = np.concatenate([np.stack([a, b, c], 1), np.stack([b, d, c], 1)])
    with open(f'{name}.inc', 'w') as out:
        out.write(f'#declare {name} = mesh2 {{ vertex_vectors {{ {nx * nt}')
        out.write(''.join(',<%.4f,%.4f,%.4f>' % tuple(p) for p in points.reshape(-1, 3)))
        out.write(f' }} normal_vectors {{ {nx * nt}')
        out.write(''.join(',<%.4f,%.4f,%.4f>' % tuple(p) for p in normal.reshape(-1, 3)))
        out.write(f' }} uv_vectors {{ {nx * nt}')
        out.write(''.join(',<%.4f,%.4f>' % p for p in zip(v.ravel(), 1 - u.ravel())))
        out.write(f' }} face_indices {{ {len(faces)}')
        out.write(''.join(',<%d,%d,%d>' % tuple(f) for f in faces))
        out.write(' } uv_mapping }\n')

if __name__ == '__main__':
    for seed, crust in enumerate(['pale', 'gold', 'done', 'dark']):
        crescent(f'crescent_{crust}', crust, 7 + seed)
