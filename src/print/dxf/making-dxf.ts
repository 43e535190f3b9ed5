import { DxfWriter, point2d, point3d, TextHorizontalAlignment, Units } from '@tarikjabiri/dxf';
import type { Picture } from '../../derived/index.ts';
import type { PartToMake } from '../../derived/making/index.ts';
import { arrowCorners, finishWords, layViews, massWords, type Extent, type Ink, type Layer, type ViewAngle } from '../../views/making/index.ts';
import { dxfText } from './dxf-text.ts';

/** Layer, colour number, line type. */
const LAYERS: readonly (readonly [Layer, number, string])[] = [['visible', 7, 'Continuous'], ['hidden', 3, 'HIDDEN'], ['centre', 1, 'CENTER'], ['hatch', 8, 'Continuous'], ['dimension', 5, 'Continuous'], ['text', 2, 'Continuous']];
const FULL_SIZE = 1000;
const DEGREE = Math.PI / 180;

/** Degrees from 0 up to 360. */
const upright = (degrees: number): number => ((degrees % 360) + 360) % 360;

/** Figures that can be read beside the part: a fortieth of its longest side, 2.5 mm at least. */
const figureHeight = ({ least, most }: Extent): number => Math.max(2.5, Math.max(most[0] - least[0], most[1] - least[1]) / 40);

/**
 * The drawing of a part as a DXF file: full size, one to one, in millimetres whatever the units of the figures; layers visible, hidden,
 * centre, hatch, dimension and text. Dimensions are lines, arrows and text, so that every reader shows them alike.
 * @returns the text of the file, the same for the same part
 */
export function makingDxf(picture: Picture, part: PartToMake, angle: ViewAngle = picture.system === 'inch' ? 'third-angle' : 'first-angle'): string {
  const bare = layViews({ ...part, shape: { ...part.shape, views: part.shape.views.map((view) => ({ ...view, dimensions: [] })) } }, { scale: FULL_SIZE, height: 2.5, system: picture.system, angle });
  const height = figureHeight(bare.extent);
  const { inks, extent } = layViews(part, { scale: FULL_SIZE, height, system: picture.system, angle });
  const file = new DxfWriter();
  file.setUnits(Units.Millimeters);
  file.addLType('HIDDEN', '_ _ _', [height * 1.5, -height * 0.75]);
  file.addLType('CENTER', '___ _ ___', [height * 4, -height * 0.8, height * 0.8, -height * 0.8]);
  for (const [name, colour, type] of LAYERS) file.addLayer(name, colour, type);
  for (const ink of inks) draw(file, ink);
  footLines(picture, part).forEach((words, index) => draw(file, { kind: 'text', layer: 'text', at: [extent.least[0], extent.least[1] - height * (3 + 1.7 * index)], height, words, anchor: 'start', turn: 0 }));
  return file.stringify();
}

/** What a title block would say; a drawing file is often parted from its sheet. */
function footLines(picture: Picture, part: PartToMake): readonly string[] {
  const { identity } = picture.known;
  return [
    `${identity.tag}${identity.invented === true ? ' (invented)' : ''}: ${part.title}, ${part.quantity} off. CHECK BEFORE CUTTING.`,
    `Full size in millimetres; figures in ${picture.system === 'inch' ? 'inches' : 'millimetres'}.${part.shape.broken === undefined ? '' : ` ${part.shape.broken}`}`,
    `${part.material}.${part.hardness === 'Does not apply' ? '' : ` Hardness: ${part.hardness}.`}`,
    ...[[...(part.mass === undefined ? [] : [`Each about ${massWords(part, picture.system)}.`]), ...(part.roughness === undefined ? [] : [`Faces without a sign ${finishWords(part, picture.system)}.`])].join(' ')].filter((words) => words !== ''),
    ...part.unknowns.map((one) => `NOT KNOWN, measure first: ${one.what}`),
    ...part.notes,
    `Log ${picture.provenance.logHash.slice(0, 32)}, ${picture.provenance.asOf.slice(0, 10)}.`,
  ];
}

function draw(file: DxfWriter, ink: Ink): void {
  file.setCurrentLayerName(ink.layer);
  switch (ink.kind) {
    case 'line':
      file.addLine(point3d(ink.from[0], ink.from[1]), point3d(ink.to[0], ink.to[1]));
      return;
    case 'circle':
      file.addCircle(point3d(ink.centre[0], ink.centre[1]), ink.radius);
      return;
    case 'arc':
      file.addArc(point3d(ink.centre[0], ink.centre[1]), ink.radius, upright(ink.from / DEGREE), upright(ink.to / DEGREE));
      return;
    case 'arrow': {
      const corners = arrowCorners(ink);
      file.addLWPolyline([...corners, corners[0]].map(([x, y]) => ({ point: point2d(x, y) })));
      return;
    }
    case 'text': {
      const at = point3d(ink.at[0], ink.at[1]);
      const horizontalAlignment = { start: TextHorizontalAlignment.Left, middle: TextHorizontalAlignment.Center, end: TextHorizontalAlignment.Right }[ink.anchor];
      file.addText(at, ink.height, dxfText(ink.words), { rotation: ink.turn / DEGREE, ...(ink.anchor === 'start' ? {} : { horizontalAlignment, secondAlignmentPoint: at }) });
    }
  }
}
