"""Opens drawing files with a reader of its own, audits them and measures what is drawn. One JSON object a file on standard output."""
import json
import math
import sys

import ezdxf
from ezdxf import bbox


def joined(entities):
    """Groups of visible entities that hang together: by common ends, or by circles about one centre."""
    groups = []
    for entity in entities:
        kind = entity.dxftype()
        if kind == 'LINE':
            keys = {point_key(entity.dxf.start), point_key(entity.dxf.end)}
        elif kind == 'ARC':
            keys = {point_key(entity.start_point), point_key(entity.end_point)}
        else:
            keys = {('centre',) + point_key(entity.dxf.center)}
        touching = [group for group in groups if group[0] & keys]
        for group in touching:
            groups.remove(group)
        groups.append((keys.union(*[group[0] for group in touching]), [entity] + [one for group in touching for one in group[1]]))
    return [group[1] for group in groups]


def point_key(point):
    return (round(point[0], 4), round(point[1], 4))


def size(entities):
    box = bbox.extents(entities)
    return [box.size.x, box.size.y]


def circles(entities):
    return sorted(2 * entity.dxf.radius for entity in entities if entity.dxftype() == 'CIRCLE')


def slopes(entities):
    out = []
    for entity in entities:
        if entity.dxftype() == 'LINE':
            dx, dy = entity.dxf.end.x - entity.dxf.start.x, entity.dxf.end.y - entity.dxf.start.y
            out.append(math.degrees(math.atan2(abs(dy), abs(dx))))
    return sorted(out)


def points(entities):
    """Corners, centres, and outermost points of circles and arcs."""
    found = []
    for entity in entities:
        kind = entity.dxftype()
        if kind == 'LINE':
            found += [entity.dxf.start, entity.dxf.end]
        elif kind in ('CIRCLE', 'ARC'):
            centre, radius = entity.dxf.center, entity.dxf.radius
            found.append(centre)
            turns = range(0, 360, 90)
            if kind == 'ARC':
                found += [entity.start_point, entity.end_point]
                start, sweep = entity.dxf.start_angle, (entity.dxf.end_angle - entity.dxf.start_angle) % 360
                turns = [turn for turn in turns if (turn - start) % 360 <= sweep]
            found += [centre + type(centre)(radius * math.cos(math.radians(turn)), radius * math.sin(math.radians(turn)), 0) for turn in turns]
    return [[point[0], point[1]] for point in found]


def chamfers(entities):
    """Lines at 45 degrees, by their length across."""
    lines = [entity for entity in entities if entity.dxftype() == 'LINE']
    spans = [(abs(line.dxf.end.x - line.dxf.start.x), abs(line.dxf.end.y - line.dxf.start.y)) for line in lines]
    return sorted(dx for dx, dy in spans if dx > 0 and abs(dx - dy) < 1e-6)


for path in sys.argv[1:]:
    document = ezdxf.readfile(path)
    audit = document.audit()
    space = document.modelspace()
    visible = [entity for entity in space if entity.dxf.layer == 'visible']
    print(json.dumps({
        'file': path,
        'errors': [str(error.message) for error in audit.errors],
        'fixes': [str(fix.message) for fix in audit.fixes],
        'units': document.units,
        'layers': sorted({entity.dxf.layer for entity in space}),
        'kinds': sorted({entity.dxftype() for entity in space}),
        'texts': [entity.plain_text() for entity in space if entity.dxftype() == 'TEXT'],
        'groups': [size(group) for group in joined(visible)],
        'circles': circles(visible),
        'slopes': slopes(visible),
        # The outline, its centres and what a thread or a hidden edge adds: where extension lines may start.
        'points': points([entity for entity in space if entity.dxf.layer in ('visible', 'hidden')]),
        'tips': [list(entity.get_points('xy')[0]) for entity in space if entity.dxftype() == 'LWPOLYLINE'],
        'arcs': sorted(entity.dxf.radius for entity in visible if entity.dxftype() == 'ARC'),
        'chamfers': chamfers(visible),
    }))
