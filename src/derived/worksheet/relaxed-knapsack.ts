/** One thing that may still be had: its worth, and the least that it can be said to cost beyond what is chosen. */
export interface Offer {
  worth: number;
  price: number;
}

const byRatio = (a: Offer, b: Offer): number => b.worth * a.price - a.worth * b.price;

/**
 * The most worth that a budget could buy if offers could be had in part (G. B. Dantzig, Oper. Res. 5:266, 1957): never less
 * than what whole offers give.
 * @param offers worth above nought, price not negative; sorted in place
 */
export function mostWorth(offers: Offer[], budget: number): number {
  offers.sort(byRatio);
  let left = budget;
  let worth = 0;
  for (const offer of offers) {
    if (offer.price <= left) {
      left -= offer.price;
      worth += offer.worth;
    } else return worth + (offer.worth * left) / offer.price;
  }
  return worth;
}

/**
 * The least price at which a worth could be had if offers could be had in part; Infinity where they do not reach it.
 * @param offers as above; sorted in place
 */
export function leastPrice(offers: Offer[], wanted: number): number {
  if (wanted <= 0) return 0;
  offers.sort(byRatio);
  let missing = wanted;
  let price = 0;
  for (const offer of offers) {
    if (offer.worth >= missing) return price + (offer.price * missing) / offer.worth;
    missing -= offer.worth;
    price += offer.price;
  }
  return Number.POSITIVE_INFINITY;
}
