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
    }))
