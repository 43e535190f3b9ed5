/** Where a part sits on the machine, and what would make it dangerous. */
export interface AboutPart {
  readonly sits: string;
  readonly danger: string;
}

/** By part. It stands by itself, since only the sheet of a part reads it. */
const ABOUT: Readonly<Record<string, AboutPart>> = {
  frame: {
    sits: 'The C-shaped casting from the base up over the dies to the shaft bearings; its inside curve is the throat, its back the spine.',
    danger: 'Every blow tries to open the throat. A crack there grows without warning until the top half comes away.',
  },
  nameplate: {
    sits: 'Plate or raised marks, often on a flat at the rear of the column; paint all over.',
    danger: 'Paint and filler hide cracks, oil holes and the numbers by which parts are found.',
  },
  ways: {
    sits: 'Machined faces of the frame on which the ram slides.',
    danger: 'Ways out of square throw the blow to one edge of the dies and lever on the dovetail lips.',
  },
  anvil: {
    sits: 'The mass under the lower die: part of the frame casting, or a block of its own.',
    danger: 'Left joined to the body during a move, a separate anvil has broken many bodies by its mass.',
  },
  'upper-die': {
    sits: 'Keyed in the dovetail at the foot of the ram.',
    danger: 'A loose or chipped upper die leaves the ram at the speed of the blow.',
  },
  'lower-die': {
    sits: 'Keyed in the die seat of the frame, the anvil or the sow block.',
    danger: 'A narrow or loose lower die hammers its way into the iron and breaks the lips of the seat.',
  },
  dovetail: {
    sits: 'The sloping flanks of ram foot and die seat, and of the dies that fit them.',
    danger: 'A key that bears on part of a flank splits the lip off.',
  },
  keys: {
    sits: 'Driven between die and dovetail flank, one for each die.',
    danger: 'A key that lets go frees a die; a brittle key throws splinters when it is driven.',
  },
  'key-removal': {
    sits: 'At the small end of each key.',
    danger: 'An unrestrained drift flies: one has flown into a face. Light taps swell the end and make it worse.',
  },
  seat: {
    sits: 'The pocket of the frame or anvil in which the lower die stands.',
    danger: 'A dished or sunk seat lets the die rock; the keys then work out and the lips break.',
  },
  'sow-block': {
    sits: 'Between frame and lower die, keyed to the frame, with a dovetail of its own on top.',
    danger: 'Left out to gain height, it lets the ram over-travel: the linkage breaks and people are hurt.',
  },
  'filler-plate': {
    sits: 'Under the lower die, over its full base, where the seat has lost depth.',
    danger: 'A plate that rocks or curls is worse than none: the die works loose on it.',
  },
  ram: {
    sits: 'The falling part: in the guide, or at the end of the helve.',
    danger: 'A dropped ram holds a hand. A crack at its dovetail or pin boss lets the die or the whole ram go.',
  },
  'ram-guide': {
    sits: 'Holds the ram against the ways, in one piece round it or capped and adjustable.',
    danger: 'A broken ear lets the ram out of its guide in the middle of a stroke.',
  },
  'guide-shims': {
    sits: 'Between guide and frame, each side.',
    danger: 'A shim that climbs out gives sudden play in the middle of a heat.',
  },
  'guide-bolts': {
    sits: 'Through the ears of the guide into the frame.',
    danger: 'Over-tightened, they break a cast ear; loose, they let the guide walk.',
  },
  'toggle-links': {
    sits: 'The short links from the lower ends of the arms to the ram.',
    danger: 'A link that breaks lets half the linkage swing free beside the operator’s face.',
  },
  'toggle-arms': {
    sits: 'The pair of long arms that hang on the crosshead and squeeze the spring between their upper ends.',
    danger: 'A cracked arm fails at speed at the height of a face.',
  },
  'toggle-pins': {
    sits: 'The four joints of the linkage: arm pivots above, arm ends below, left and right.',
    danger: 'A seized or broken pin breaks the arm.',
  },
  'coil-spring': {
    sits: 'Between the upper ends of the toggle arms.',
    danger: 'A breaking spring flies off at head height. Its preload must be let off before anything is opened.',
  },
  'spring-bolt': {
    sits: 'Through the spring, drawing the arm ends together.',
    danger: 'It holds the full preload; let it down in small turns, never with a wrench flung round.',
  },
  crosshead: {
    sits: 'Hangs on the connecting rod and carries the arms.',
    danger: 'A cracked crosshead drops arms, spring and ram together.',
  },
  'connecting-rod': {
    sits: 'From the crank pin down to the crosshead, the bow or the tail of the helve.',
    danger: 'Lengthened past its thread, it comes apart in the stroke.',
  },
  crank: {
    sits: 'On the front end of the shaft; the pin sits in a slot or hole that sets the throw.',
    danger: 'A pin that comes out lets the rod flail; a cracked plate bursts.',
  },
  'bow-spring': {
    sits: 'Above the ram: a pack of leaves clipped in the middle to the rod, its ends strapped to the ram.',
    danger: 'A leaf that breaks flies off at head height; the whole preload sits in the straps.',
  },
  helve: {
    sits: 'The pivoted beam: head and upper die at one end, the drive at the other, cushions beside it.',
    danger: 'A cracked helve throws its head. Head bolts go brittle with the blows and part without warning.',
  },
  'main-bearings': {
    sits: 'The two split bearings of the main shaft; front is the crank end.',
    danger: 'A loose bearing lifts the shaft and hangs the clutch up: the hammer will not let go.',
  },
  pouring: {
    sits: 'In the cleaned bearing shells, round the shaft or a mandrel.',
    danger: 'A trace of damp under molten metal explodes. Babbitt holds lead.',
  },
  'bearing-caps': {
    sits: 'Over the main bearings, with shims in the split.',
    danger: 'A loose cap lets the shaft out under load.',
  },
  'main-shaft': {
    sits: 'Along the top of the frame, from crank plate to clutch pulley.',
    danger: 'Too little end play binds the clutch, too much makes it grab.',
  },
  pulley: {
    sits: 'The driven belt wheel on the hammer’s shaft.',
    danger: 'A cracked rim or spoke bursts at speed.',
  },
  'clutch-facing': {
    sits: 'On the cone or its shoes, inside the clutch pulley.',
    danger: 'A grabbing clutch throws the ram down at the first touch; an old facing may hold asbestos.',
  },
  'clutch-pulley': {
    sits: 'Between the loose clutch pulley and the shaft.',
    danger: 'A worn bush lets the pulley hang on the cone: the hammer runs on when the treadle is up.',
  },
  shipper: {
    sits: 'Moves the cone or pulley along the shaft when the treadle goes down.',
    danger: 'A bent or binding yoke keeps the clutch in after the foot is off.',
  },
  treadle: {
    sits: 'The foot bar round the base, its pivot and its rod to the clutch or idler.',
    danger: 'A foot or a fallen bar on an unguarded treadle starts the hammer.',
  },
  'return-spring': {
    sits: 'Lifts the treadle and opens the clutch.',
    danger: 'A lazy return leaves the clutch dragging.',
  },
  brake: {
    sits: 'A band or shoe on the flywheel or clutch drum, worked by the treadle.',
    danger: 'Where tools are put under the die, a slipping brake traps a hand: one was held for five minutes under a 100 lb ram.',
  },
  'oil-ways': {
    sits: 'At every bearing, pin and way; total-loss oiling.',
    danger: 'A blocked hole seizes a pin, and a seized pin breaks an arm.',
  },
  'drive-line': {
    sits: 'Whatever turns the hammer’s pulley.',
    danger: 'Too fast multiplies the load on every pin by the square of the speed.',
  },
  belt: {
    sits: 'From driver to the hammer’s pulley.',
    danger: 'A belt takes a sleeve in before a hand can follow; a lace that breaks whips.',
  },
  'belt-idler': {
    sits: 'On an arm of the treadle: tightens the belt, and so is the clutch.',
    danger: 'A belt that drags with the treadle up keeps the ram creeping.',
  },
  motor: {
    sits: 'On the frame, a bracket or the wall.',
    danger: 'Live parts; and a weak motor stalls and burns.',
  },
  starter: {
    sits: 'On the wall or frame, within reach of the operator.',
    danger: 'Without a way to lock it off, no hand may go near the dies.',
  },
  'phase-converter': {
    sits: 'Between single-phase supply and three-phase motor.',
    danger: 'Its third leg is live whenever it turns.',
  },
  'tyre-wheel': {
    sits: 'A small roller pressed by the treadle on a tyre that is the flywheel.',
    danger: 'A soft or flat-spotted tyre bounces the drive and drops the ram without warning.',
  },
  base: {
    sits: 'The foot flange of the frame, its bolt ears and what they stand on.',
    danger: 'A base that rocks walks; a cracked ear lets one corner go.',
  },
  'hold-down-bolts': {
    sits: 'Through the base into block, slab or timbers.',
    danger: 'A hammer that walks takes its operator with it.',
  },
  foundation: {
    sits: 'Block, slab or timbers under the base, and the soil below.',
    danger: 'A slab that breaks lets the hammer tip; a thin one shakes the house.',
  },
  guards: {
    sits: 'In front of the moving linkage, round the belt, behind the dies.',
    danger: 'Without one a breaking spring, pin or key goes straight at whoever stands in front.',
  },
  'whole-machine': {
    sits: 'All of it.',
    danger: 'Top-heavy: several have gone over while being moved.',
  },
  running: {
    sits: 'The hammer at work: idle, soft on wood, full, on hot steel, and let go.',
    danger: 'Stand aside of the plane of spring and linkage; a second person stands at the isolator.',
  },
};

/** Returns what is said about the part with that id. Throws where no such part exists. */
export function aboutPart(id: string): AboutPart {
  const about = ABOUT[id];
  if (about === undefined) throw new Error(`no such part: ${id}`);
  return about;
}
