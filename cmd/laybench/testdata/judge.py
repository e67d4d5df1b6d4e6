"""Checks a lay written by laybench against its instance, by shapely.

usage: judge.py INSTANCE.json LAY.json
Exits with 1 and says why if a piece is missing, reaches out of the strip or
shares area with another.
"""
import json
import sys

from shapely.affinity import rotate, translate
from shapely.geometry import Polygon

instance, lay = (json.load(open(path)) for path in sys.argv[1:3])
items = {item["id"]: item for item in instance["items"]}
width, length = instance["width"], lay["length"]
eps = 1e-9 * width
faults, placed, pieces = [], {}, []

for p in lay["placements"]:
    item = items[p["item"]]
    key = (p["item"], p["copy"])
    placed[key] = placed.get(key, 0) + 1
    if not item["free_rotation"] and p["rotation"] not in item["rotations"]:
        faults.append(f"{key}: turned by {p['rotation']}")
    shape = translate(rotate(Polygon(item["polygon"]), p["rotation"], origin=(0, 0)), p["x"], p["y"])
    x0, y0, x1, y1 = shape.bounds
    if x0 < -eps or y0 < -eps or x1 > length + eps or y1 > width + eps:
        faults.append(f"{key}: reaches out to {shape.bounds}")
    pieces.append((key, shape))

want = {(i, c): 1 for i, item in items.items() for c in range(item["demand"])}
if placed != want:
    faults.append("not every copy is placed just once")
for n, (key, shape) in enumerate(pieces):
    for other, second in pieces[:n]:
        common = shape.intersection(second).area
        if common > 1e-9 * min(shape.area, second.area):
            faults.append(f"{other} and {key} share {common}")
area = sum(shape.area for _, shape in pieces)
if abs(100 * area / (width * length) - lay["density"]) > 1e-6:
    faults.append("density is not that of the pieces")
print("\n".join(faults))
sys.exit(bool(faults))
