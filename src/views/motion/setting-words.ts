import type { SettingName } from '../../derived/motion/index.ts';

/** A value of the simulator by the name that the shop gives it. */
const NAMES: Readonly<Record<string, string>> = {
  throw: 'throw', rodLength: 'rod length', restGap: 'rest gap', frameHeight: 'rest gap', preCompression: 'spring preload', sag: 'spring length lost', springRate: 'spring rate', driveSpeed: 'speed without slip',
  workThickness: 'work thickness', stackLoss: 'die height lost', treadle: 'treadle', clutchTorque: 'grip of the clutch', lostMotion: 'play in the joints', jointStop: 'room before the linkage meets its guide',
  upperStop: 'room before the ram meets what carries it', guideFriction: 'drag of the guide', pinFriction: 'drag of the pins', restitution: 'spring-back of the work', ramMass: 'ram mass',
  ledgeClearance: 'clearance of linkage over guide, dies as made', anvilRatio: 'anvil to ram', pullOutTorque: 'what the motor can pull', pullOutSlip: 'slip of the motor at its limit', stopStiffness: 'stiffness of the stops', stopDamping: 'damping of the stops',
  sideFriction: 'drag under the rod’s side thrust', viscous: 'oil drag', crankInertia: 'flywheel and crank', carrierMass: 'mass of crosshead, arms and spring', motorInertia: 'rotor and belts', bearingFriction: 'drag of the bearings',
  'contact.restitution': 'spring-back of the work', 'suspension.lowerLimb': 'arm, pivot to lower pin', 'suspension.upperLimb': 'arm, pivot to spring pin', 'suspension.link': 'link length', 'suspension.armAngle': 'lean of the arms', 'suspension.crankOffset': 'bend of the arms',
  'suspension.rate': 'spring rate', 'suspension.preCompression': 'spring preload', 'suspension.sag': 'spring length lost', 'suspension.travel': 'spring travel to solid', 'suspension.solidRate': 'stiffness once all its travel is used up',
  'suspension.tipRate': 'bow rate at one end', 'suspension.tipDraw': 'draw of the straps', 'suspension.strap': 'strap length', 'suspension.pathAngle': 'path of the bow’s ends', 'suspension.tipTravel': 'travel of the bow’s ends',
  'suspension.headRadius': 'pivot to head', 'suspension.cushionRadius': 'pivot to cushions', 'suspension.rodRadius': 'pivot to rod', 'suspension.beamInertia': 'beam in swing', 'suspension.beamMoment': 'weight of the beam', 'suspension.cushionRate': 'cushion rate',
  'suspension.hardening': 'hardening of the cushions', 'suspension.squeeze': 'squeeze of the cushions', 'suspension.solidSqueeze': 'squeeze to solid', duration: 'length of the run', relative: 'tolerance', sampleEvery: 'samples',
};

/** @param name setting, or dotted name in the specification */
export const settingWords = (name: SettingName | string): string => NAMES[name] ?? name;

/** A refusal of the simulator with the shop's name in the place of its own. */
export function refusalWords(field: string, sentence: string): string {
  const own = [field, field.replace(/^.*\./, '')];
  for (const name of own) if (sentence.startsWith(`${name} `)) return `${settingWords(field)}${sentence.slice(name.length)}`;
  return sentence.replace(/\b(preCompression|jointStop|upperStop|tipDraw|solidSqueeze|beamMoment|travel|ledgeClearance)\b/g, (name) => `the ${NAMES[name] ?? NAMES[`suspension.${name}`] ?? name}`).replaceAll('the the ', 'the ');
}
