import {
  blowsTo, carbonSteelFlowStress, drivenRamEnergy, forceByMeanPressure, forceByShapeFactor, forceSlidingAndSticking, peakForce, reductionByBlow, stripForce, timeBetween, upsetDiameter, upsetStrain, upsetWork,
} from '../../methods/forming/index.ts';
import { greyIronClass, GREY_IRON } from '../../methods/elements/index.ts';
import { answer, figure, outside, saying, warnIf, type Reckoning } from './reckoning.ts';

const CARBON = { name: 'carbon', kind: 'ratio', words: 'carbon in the steel', usual: '0.2 %' } as const;
const FRICTION = { name: 'friction', kind: 'ratio', words: 'friction between work and die', usual: '0.3' } as const;

const UPSET: Reckoning = {
  name: 'upset', title: 'Upsetting a round: force at a height, work to get there, and the new diameter', formula: 'F = K Y A; W = V Y [ln(h0/h1) + (4µ/9)√(V/π)(h1^−1.5 − h0^−1.5)]',
  source: 'Groover, Fundamentals of Modern Manufacturing, ch. 18 (shape factor); Kalpakjian and Schmid, ch. 14 (mean pressure); slab method, integrated exactly', validity: 'flat dies wider than the work, volume kept, no barrelling; the three forces differ and all are shown',
  inputs: [{ name: 'diameter', kind: 'length', words: 'diameter before' }, { name: 'height', kind: 'length', words: 'height before' }, { name: 'new-height', kind: 'length', words: 'height after' }, { name: 'flow-stress', kind: 'pressure', words: 'flow stress of the work' }, FRICTION],
  run: (given) => {
    const { diameter, height, after } = { diameter: given.of('diameter'), height: given.of('height'), after: given.of('new-height') };
    if (!(after > 0 && after < height)) return outside(`the height after lies outside what upsetting does; above 0 and below the height before is allowed: ${(1000 * after).toFixed(1)} mm`);
    const wide = upsetDiameter(diameter, height, after);
    const disc = { flowStress: given.of('flow-stress'), radius: wide / 2, height: after, friction: given.of('friction') };
    const volume = (Math.PI / 4) * diameter ** 2 * height;
    return answer(
      [
        figure('diameter after', 'length', wide), figure('strain', 'ratio', upsetStrain(height, after)), figure('force, by the shape factor', 'force', forceByShapeFactor(disc)), figure('force, by the mean pressure', 'force', forceByMeanPressure(disc)),
        figure('force, sliding and sticking', 'force', forceSlidingAndSticking(disc)), figure('work', 'energy', upsetWork({ volume, height, flowStress: disc.flowStress, friction: disc.friction }, after)),
      ],
      warnIf(height > 2.5 * diameter, 'a piece higher than about two and a half diameters bends instead of upsetting (common practice, no source)'),
    );
  },
};

const DRAW: Reckoning = {
  name: 'draw-force', title: 'Drawing a bar between flat dies: force on the strip under them', formula: 'slab method, sliding at the edges and sticking in the middle, 2k = 2Y/√3', source: 'Ghosh and Mallik, Manufacturing Science, ch. 3', validity: 'plane strain: the bar is much longer than the die is wide',
  inputs: [{ name: 'die-width', kind: 'length', words: 'length of bar under the dies' }, { name: 'bar-width', kind: 'length', words: 'width of the bar' }, { name: 'height', kind: 'length', words: 'thickness of the bar' }, { name: 'flow-stress', kind: 'pressure', words: 'flow stress of the work' }, FRICTION],
  run: (given) => answer([figure('force', 'force', stripForce({ flowStress: given.of('flow-stress'), width: given.of('die-width'), length: given.of('bar-width'), height: given.of('height'), friction: given.of('friction') }))]),
};

const BLOW: Reckoning = {
  name: 'blow', title: 'What one blow takes off, how many it needs, and the peak force', formula: 'the work of the upset set equal to the energy that reaches it; F = 3E/(2s)', source: 'upset work as in `upset`; ASM Handbook vol. 14, Hammers and Presses for Forging, eq. 11 and 13', validity: 'flow stress constant over the blow, up to 87 % reduction; the peak force is for work, not for die on die',
  inputs: [
    { name: 'energy', kind: 'energy', words: 'energy of the blow' }, { name: 'efficiency', kind: 'ratio', words: 'share that reaches the work; soft blows 0.8 to 0.9, hard 0.2 to 0.5', usual: '0.8' },
    { name: 'bite', kind: 'length', words: 'length of bar under the dies' }, { name: 'width', kind: 'length', words: 'width of the bar' }, { name: 'height', kind: 'length', words: 'thickness of the bar' },
    { name: 'new-height', kind: 'length', words: 'thickness wanted' }, { name: 'flow-stress', kind: 'pressure', words: 'flow stress of the work' }, FRICTION,
  ],
  run: (given) => {
    const height = given.of('height');
    const bite = { volume: given.of('bite') * given.of('width') * height, height, flowStress: given.of('flow-stress'), friction: given.of('friction') };
    const energy = given.of('energy') * given.of('efficiency');
    const reduction = reductionByBlow(bite, energy);
    if (reduction.state !== 'known') return outside(reduction.because);
    const blows = blowsTo(bite, given.of('new-height'), energy);
    return answer([
      figure('taken off by the first blow', 'length', reduction.reduction), figure('as a share', 'ratio', reduction.share), figure('thickness after it', 'length', reduction.newHeight),
      blows === undefined ? saying('blows to the thickness wanted', 'more than a thousand, or a blow too heavy to reckon with') : figure('blows to the thickness wanted', 'count', blows), figure('peak force of the first blow', 'force', peakForce(energy, reduction.reduction)),
    ]);
  },
};

const FLOW: Reckoning = {
  name: 'flow-stress', title: 'Flow stress of hot carbon steel', formula: 'Misaka and Yoshimoto; Shida; Hensel and Spittel where the carbon fits', source: 'J. Japan Soc. Technol. Plasticity 8:414 (1967) and 9:127 (1968); Hensel and Spittel', validity: '750 to 1200 °C, strain up to 0.5 or 0.7, rate 0.1 to 200 per second, carbon up to 1.2 %; the laws disagree by some 12 % each way',
  inputs: [{ name: 'temperature', kind: 'temperature', words: 'temperature of the steel' }, { name: 'strain', kind: 'ratio', words: 'logarithmic strain', usual: '0.3' }, { name: 'rate', kind: 'frequency', words: 'strain rate', usual: '50 Hz' }, CARBON],
  run: (given) => {
    const range = carbonSteelFlowStress({ temperature: given.of('temperature'), strain: given.of('strain'), rate: given.of('rate') }, given.of('carbon'));
    if (range.state !== 'known') return outside(range.because.join('; '));
    return answer([figure('least', 'pressure', range.least), figure('middle', 'pressure', range.middle), figure('most', 'pressure', range.most), saying('laws that hold here', range.laws.join(', '))]);
  },
};

const COOLING: Reckoning = {
  name: 'cooling', title: 'How long a hot bar stays hot', formula: 'ρ c (V/A) dT/dt = −[h (T − T_air) + ε σ (T⁴ − T_walls⁴)]', source: 'Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, ch. 5', validity: 'bars so thin that they are one temperature throughout (Biot number below 0.1); no cold die touching',
  inputs: [
    { name: 'thickness', kind: 'length', words: 'side of a square bar or diameter of a round one' }, { name: 'from', kind: 'temperature', words: 'temperature out of the fire' }, { name: 'to', kind: 'temperature', words: 'temperature at which to stop' },
    { name: 'around', kind: 'temperature', words: 'temperature of air and walls', usual: '20 °C' }, { name: 'emissivity', kind: 'ratio', words: 'emissivity; scaled steel about 0.8', usual: '0.8' },
  ],
  run: (given) => {
    const body = { thickness: given.of('thickness') / 4, density: 7800, heatCapacity: 650, emissivity: given.of('emissivity') };
    const cooled = timeBetween(given.of('from'), given.of('to'), body, { air: given.of('around'), walls: given.of('around'), film: 10 });
    return cooled.state === 'known' ? answer([figure('time', 'time', cooled.time), saying('taken for steel', '7800 kg/m³, 650 J/(kg K), still air 10 W/(m² K); from memory')]) : outside('the bar never gets there in these surroundings');
  },
};

const RAM_ENERGY: Reckoning = {
  name: 'ram-energy', title: 'Energy of a ram that falls, and is driven', formula: 'E = (m g + F) H', source: 'ASM Handbook vol. 14, Hammers and Presses for Forging', validity: 'a ram that falls free, with a mean driving force where there is one',
  inputs: [{ name: 'mass', kind: 'mass', words: 'mass of ram and upper die' }, { name: 'fall', kind: 'length', words: 'height of fall' }, { name: 'drive', kind: 'force', words: 'mean driving force', usual: '0 lbf' }],
  run: (given) => {
    const energy = drivenRamEnergy(given.of('mass'), 9.80665, given.of('drive'), given.of('fall'));
    return answer([figure('energy', 'energy', energy), figure('speed at the blow', 'velocity', Math.sqrt((2 * energy) / given.of('mass')))]);
  },
};

const SEAT: Reckoning = {
  name: 'seat-pressure', title: 'Pressure of a die on its seat, and how wide the die must be', formula: 'F = 2E/s die on die (force rising in a straight line), 3E/(2s) on work; p = F / (width × length)', source: 'mechanics; ASM Handbook vol. 14 for work; Shigley, table A-24 for the iron', validity: 'pressure even over the footprint; edges carry more; stopping distance is the great unknown',
  inputs: [
    { name: 'energy', kind: 'energy', words: 'energy of the blow' }, { name: 'stop', kind: 'length', words: 'distance in which the ram is stopped; die on die cold about 0.5 mm', usual: '0.5 mm' }, { name: 'width', kind: 'length', words: 'width of the die on the seat' },
    { name: 'length', kind: 'length', words: 'length of the die on the seat' }, { name: 'iron-class', kind: 'choice', words: 'class of the grey iron', choices: GREY_IRON.map((iron) => String(iron.ironClass)), usual: '25' }, { name: 'share', kind: 'ratio', words: 'share of the iron\'s strength that may be used', usual: '20 %' },
  ],
  run: (given) => {
    const iron = greyIronClass(Number(given.choice('iron-class')));
    if (iron === undefined) return outside('no such class of iron is in the table');
    const force = (2 * given.of('energy')) / given.of('stop');
    const pressure = force / (given.of('width') * given.of('length'));
    const share = pressure / iron.compressiveStrength;
    return answer([figure('peak force', 'force', force), figure('pressure on the seat', 'pressure', pressure), figure('strength of the iron, pressed', 'pressure', iron.compressiveStrength), figure('share of it', 'ratio', share), figure('least width of die for the share', 'length', force / (given.of('share') * iron.compressiveStrength * given.of('length')))], warnIf(share > given.of('share'), 'the seat will sink under repeated blows'));
  },
};

export const HOT_WORK_RECKONINGS: readonly Reckoning[] = [UPSET, DRAW, BLOW, FLOW, COOLING, RAM_ENERGY, SEAT];
