export { crankSlider, strokeOf } from './crank-slider.ts';
export type { CrankSlider, SliderState } from './crank-slider.ts';
export { crankSeries, seriesGreatestSpeedAngle } from './crank-series.ts';
export { toggleRatio, toggleRatioByLengths } from './toggle.ts';
