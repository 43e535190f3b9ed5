export { limitsCard, type LimitsCard } from './limits-card.ts';
