import type { Dispute } from '../criterion.ts';

/** Both sides of what the trade does not agree on, by the criterion. They stand by themselves: no grade follows from them, and the first page is sent without. */
export const DISPUTES: Readonly<Record<string, Dispute>> = {
  'frame.crack': { oneSide: 'Stitching without heat is the sure repair of a cracked frame; weld on cast iron is the last resort.', otherSide: 'Brazed and even welded frames have worked for decades where somebody knew how to heat and cool the whole casting.', source: 'page-frame' },
  'frame.repair': { oneSide: 'A bolted plate over a broken spine is honest and strong enough for a small hammer.', otherSide: 'A plate hides the crack and carries nothing until the crack has opened; only stitching or braze joins the iron.', source: 'page-frame' },
  'nameplate.paint': { oneSide: 'A full coat of paint is a restoration and adds to the price.', otherSide: 'Painted is not restored: paint hides cracks, and a measured sheet is worth more than a coat.', source: 'common-practice' },
  'anvil.ratio': { oneSide: 'Ten to fifteen times the ram is the least that is worth building.', otherSide: 'Six times works: home-built hammers have run for years at that.', source: 'page-foundation' },
  'dies.upper-hardness': { oneSide: 'Dies belong hard, about 48 to 50 HRC, or they mushroom.', otherSide: 'Unhardened tough steel, about 37 HRC and below, dressed twice a year, is safer and good enough.', source: 'page-dies' },
  'dies.lower-hardness': { oneSide: 'Dies belong hard, about 48 to 50 HRC, or they mushroom.', otherSide: 'Unhardened tough steel, about 37 HRC and below, dressed twice a year, is safer and good enough.', source: 'page-dies' },
  'dies.parallel': { oneSide: 'A taper ground on the upper die makes good what the ways have lost, for an hour’s work.', otherSide: 'A tapered die hides ways that are out, and every new die has to be tapered again.', source: 'page-guide' },
  'stack.loss': { oneSide: 'A longer rod makes good short dies at no cost.', otherSide: 'A longer rod brings the linkage onto the guide; only height under the dies makes good lost height.', source: 'owners-practice' },
  'seat.dish': { oneSide: 'A careful man files and grinds a seat true in place.', otherSide: 'Only a mill makes floor and flanks true to one another; hand work moves the fault about.', source: 'page-seat' },
  'sow-block.fitted': { oneSide: 'Leaving the sow block out gains height for taller work.', otherSide: 'Never: the ram over-travels, parts break and people are hurt.', source: 'page-seat' },
  'guide.play-fore-aft': { oneSide: 'A quarter inch of slop is normal for the age and good enough for light work.', otherSide: 'It breaks lips, keys and links; the owner who bought at a quarter inch had it rebuilt before heavy use.', source: 'page-guide' },
  'guide.play-side': { oneSide: 'A quarter inch of slop is normal for the age and good enough for light work.', otherSide: 'It breaks lips, keys and links; the owner who bought at a quarter inch had it rebuilt before heavy use.', source: 'page-guide' },
  'journals.clearance': { oneSide: '0.004 in for each inch of shaft is the end of a bearing’s service.', otherSide: 'Hammer people run on with more, as long as the clutch lets go and nothing gets hot.', source: 'sleeve-bearing-table' },
  'clutch.state': { oneSide: 'A cone clutch is kept oiled, with thin oil, so that it slips and lets go.', otherSide: 'Oil does not belong on leather: it swells and rots, and a facing oiled once is oiled for ever.', source: 'page-clutch' },
  'clutch.play-much': { oneSide: 'Above 30 thou the bush is worn out.', otherSide: 'A very worn bush ran smoothly where two belts pulled straight up and carried the pulley: the way the belt pulls matters.', source: 'page-clutch' },
  'brake.fitted': { oneSide: 'Every hammer wants a brake.', otherSide: 'A brake hides a clutch that drags; get the clutch right and do without.', source: 'page-brake' },
  'oil-ways.open': { oneSide: 'Plain oil of about ISO 68, often, into open bearings: grease only blocks holes. Old rules name oils by SAE grade.', otherSide: 'A tacky bar oil on ways and pins stays put and is oiled half as often; SAE 30 is about ISO 100, and tables differ by a grade.', source: 'page-bearings' },
  'running.noise': { oneSide: 'By the 85 dBA, 3 dB rule the allowed time at 100 dBA is 15 min.', otherSide: 'By the 90 dBA, 5 dB rule of the United States it is 2 h.', source: 'osha-1910-95' },
  'bolts.state': { oneSide: 'A hammer belongs bolted hard to its block.', otherSide: 'Belting bonded under the foot has held and quietened a 50 lb hammer since the eighties.', source: 'page-foundation' },
  'foundation.kind': { oneSide: 'Two feet of concrete under every hammer.', otherSide: 'Old sleepers or oak beams, well bolted, work as well at 50 lb; both have stood for decades.', source: 'page-foundation' },
  'drive.rate': { oneSide: 'It always ran at 400, and nothing broke.', otherSide: '10 % more is 1.21 times the load and 25 % more 1.56 times; never above the maker’s rate, and 15 to 20 % under where it is not known.', source: 'rigid-body-mechanics' },
  'idler.drag': { oneSide: 'The belt should hang well clear of the pulley: one was found with four to five inches.', otherSide: 'Just clear is enough; more only lengthens the pedal’s travel.', source: 'page-drive' },
  'converter.unbalance': { oneSide: 'Five in a hundred is the most that a motor should see.', otherSide: 'Converter users live with up to ten and watch the motor’s temperature.', source: 'nema-mg-1' },
};
