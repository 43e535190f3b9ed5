/** A round piece between two flat dies, as it is now. SI, all positive; friction not negative. */
export interface Disc {
  /** Pa */
  readonly flowStress: number;
  readonly radius: number;
  readonly height: number;
  /** Coulomb's coefficient between work and die */
  readonly friction: number;
}

/** Force with the empirical shape factor 1 + 0.4 μD/h, N (M. P. Groover, Fundamentals of Modern Manufacturing, ch. 18). */
export const forceByShapeFactor = (one: Disc): number => (1 + (0.4 * one.friction * 2 * one.radius) / one.height) * one.flowStress * Math.PI * one.radius ** 2;

/** Force with the mean pressure Y(1 + 2μr/3h), N: the sliding pressure hill to first order, for μr/h well below 1 (Kalpakjian and Schmid, Manufacturing Engineering and Technology, ch. 14). */
export const forceByMeanPressure = (one: Disc): number => one.flowStress * Math.PI * one.radius ** 2 * (1 + (2 * one.friction * one.radius) / (3 * one.height));

/** Mean over the disc of exp(2μ(R - r)/h): 2 (e^x - x - 1)/x² with x = 2μR/h, by its series near 0 where the difference loses its digits. */
function slidingFactor(x: number): number {
  if (x < 1e-3) return 1 + x / 3 + (x * x) / 12;
  return (2 * (Math.expm1(x) - x)) / (x * x);
}

/** Force with the exponential pressure hill, the work sliding on the die everywhere, N. */
export const forceSliding = (one: Disc): number => one.flowStress * Math.PI * one.radius ** 2 * slidingFactor((2 * one.friction * one.radius) / one.height);

/**
 * Radius within which the work sticks to the die because friction would exceed the shear strength Y/√3, m; 0 where it slides everywhere.
 */
export function stickingRadius(one: Disc): number {
  if (one.friction === 0) return 0;
  const rise = Math.log(1 / (Math.sqrt(3) * one.friction));
  return Math.max(0, one.radius - (Math.max(0, rise) * one.height) / (2 * one.friction));
}

/**
 * Force with sliding outside and sticking inside, N, integrated exactly. (One textbook takes the mean of the pressures at the centre and at
 * the edge of the sticking disc, as if it were a strip, and prints a force 13 % too large for its example.)
 */
export function forceSlidingAndSticking(one: Disc): number {
  const stick = stickingRadius(one);
  if (stick === 0) return forceSliding(one);
  const { flowStress, radius, height, friction } = one;
  const shear = flowStress / Math.sqrt(3);
  // Where even the rim sticks, the pressure starts at the flow stress there.
  const edge = flowStress * (stick < radius ? Math.exp((2 * friction * (radius - stick)) / height) : 1);
  // Cone of slope 2 shear/h over the sticking disc.
  const inside = Math.PI * stick ** 2 * (edge + (2 * shear * stick) / (3 * height));
  const a = (2 * friction) / height;
  // Integral of 2 pi r Y exp(a(R - r)) from the sticking radius to the rim.
  const antiderivative = (r: number): number => -Math.exp(a * (radius - r)) * (r / a + 1 / (a * a));
  const outside = stick < radius ? 2 * Math.PI * flowStress * (antiderivative(radius) - antiderivative(stick)) : 0;
  return inside + outside;
}

/** A bar pressed across its width between flat dies and held from spreading along its length (plane strain). SI. */
export interface Strip {
  readonly flowStress: number;
  /** in the direction in which it spreads */
  readonly width: number;
  readonly length: number;
  readonly height: number;
  readonly friction: number;
}

/** Force on a strip with sliding at the edges and sticking in the middle, N (slab method, Ghosh and Mallik, Manufacturing Science, ch. 3; von Mises, 2k = 2Y/√3). */
export function stripForce(one: Strip): number {
  const pressure = (2 * one.flowStress) / Math.sqrt(3);
  const half = one.width / 2;
  if (one.friction === 0) return pressure * one.width * one.length;
  // Sticks where friction would reach the shear strength, half the edge pressure.
  const slide = Math.min(half, (Math.max(0, Math.log(1 / (2 * one.friction))) * one.height) / (2 * one.friction));
  const a = (2 * one.friction) / one.height;
  const edge = Math.exp(a * slide);
  const sliding = Math.expm1(a * slide) / a;
  const rest = half - slide;
  const sticking = edge * rest + rest ** 2 / (2 * one.height);
  return 2 * one.length * pressure * (sliding + sticking);
}

/** Diameter of a round piece after it was upset to a height, volume kept, m. */
export const upsetDiameter = (diameter: number, height: number, newHeight: number): number => diameter * Math.sqrt(height / newHeight);

/** Logarithmic strain of an upset, positive: ln(h0/h1). */
export const upsetStrain = (height: number, newHeight: number): number => Math.log(height / newHeight);
