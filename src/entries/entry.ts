import type { Quantity } from '../methods/quantity/index.ts';
import type { LinkageFamily } from '../hammer/index.ts';

/** How something is known. Absent means not checked, which is never taken as good. */
export type Standing = 'told' | 'seen' | 'measured';

/** A quantity as a person gave it: the SI value for the sums, the text for the page. */
export interface WrittenQuantity {
  readonly quantity: Quantity;
  readonly asWritten: string;
}

export interface Money {
  /** Amount in the currency's main unit; never negative. */
  readonly amount: number;
  /** ISO 4217 letters, or `unit` where the yard keeps its own. */
  readonly currency: string;
}

export interface EnrolBody {
  readonly tag: string;
  readonly name?: string;
  readonly maker?: string;
  readonly serial?: string;
  readonly place?: string;
  readonly year?: string;
  readonly ramClass: WrittenQuantity;
  readonly family: LinkageFamily;
  /** True for a hammer of an invented scenario; every paper then says so. */
  readonly invented?: boolean;
  readonly words?: string;
}

export interface AsMadeBody extends WrittenQuantity {
  readonly place: string;
  readonly at?: string;
  /** Where the as-made value comes from. */
  readonly from?: string;
}

export interface ReadingBody extends WrittenQuantity {
  readonly place: string;
  readonly at?: string;
  readonly tool?: string;
  /** Id of a measuring way where the place has several. */
  readonly way?: string;
  readonly standing: 'told' | 'measured';
  /** Who said so, where it was told. */
  readonly saidBy?: string;
  readonly words?: string;
}

export interface SightingBody {
  readonly look: string;
  readonly at?: string;
  readonly answer: string;
  readonly standing: 'told' | 'seen';
  /** Who said so, where it was told. */
  readonly saidBy?: string;
  readonly words?: string;
  /** SHA-256 of photographs that show it. */
  readonly photographs?: readonly string[];
}

export interface StatementBody {
  readonly words: string;
  readonly saidBy?: string;
  /** Part that it is about. */
  readonly part?: string;
}

export interface RecordingBody {
  readonly sha256: string;
  readonly mediaType: string;
  readonly words?: string;
  /** What the hammer was doing. */
  readonly run?: 'idle' | 'light' | 'full' | 'release' | 'work';
}

export interface PhotographBody {
  readonly sha256: string;
  readonly mediaType: string;
  /** Said in words for a reader who cannot see it. */
  readonly words: string;
  readonly part?: string;
}

export interface SettingBody extends WrittenQuantity {
  /** Measuring place that the adjustment changed. */
  readonly place: string;
  readonly at?: string;
  readonly before?: WrittenQuantity;
  readonly words?: string;
}

/** What a quantity of something bought is counted in. */
export const PRICE_UNITS = ['each', 'set', 'kg', 'lb', 'm', 'ft', 'hour'] as const;
export type PriceUnit = (typeof PRICE_UNITS)[number];

export interface PriceBody {
  /** Job or part that the price is for; `money.eur` for a rate: what one of that currency costs in another. */
  readonly of: string;
  readonly price: Money;
  readonly sourceKind: 'paid' | 'quoted' | 'heard' | 'listed';
  readonly quantity: number;
  /** Unit of the quantity; as the part is counted where left out. */
  readonly unit?: PriceUnit;
  /** Day of the price, year, month, day, where it is not the day on which it was entered. */
  readonly on?: string;
  readonly saidBy?: string;
  readonly leadDays?: number;
  readonly words?: string;
}

export interface JobProgressBody {
  readonly job: string;
  readonly state: 'planned' | 'started' | 'done' | 'dropped';
  readonly hours?: number;
  readonly words?: string;
}

export interface HoursBody {
  /** Running time since the last such entry, s. */
  readonly quantity: Quantity;
  readonly asWritten: string;
}

export interface OverrideBody {
  /** Criterion whose grade the owner sets differently. */
  readonly criterion: string;
  readonly at?: string;
  /** The owner's own limit instead of the default step, as a quantity of the criterion's value. */
  readonly step?: WrittenQuantity & { readonly grade: 'watch' | 'limited' | 'stand-down' };
  readonly author: string;
  readonly reason: string;
}

export interface CorrectionBody {
  /** Id of the entry that was wrong; it stays in the log and is passed over. */
  readonly entry: string;
  readonly why: string;
}

export interface EntryBodies {
  readonly enrol: EnrolBody;
  readonly 'as-made': AsMadeBody;
  readonly reading: ReadingBody;
  readonly sighting: SightingBody;
  readonly statement: StatementBody;
  readonly recording: RecordingBody;
  readonly photograph: PhotographBody;
  readonly setting: SettingBody;
  readonly price: PriceBody;
  readonly 'job-progress': JobProgressBody;
  readonly hours: HoursBody;
  readonly override: OverrideBody;
  readonly correction: CorrectionBody;
}

export type EntryKind = keyof EntryBodies;

/** One immutable record of the log, whatever its kind; stores need no more than this. */
export interface Entry {
  /** Sortable, made on the device: 48 bits of time, 80 of chance, Crockford base 32. */
  readonly id: string;
  /** Id of the hammer: the id of its enrol entry. */
  readonly hammer: string;
  /** Instant at which it was seen, ISO 8601 with zone. */
  readonly at: string;
  readonly by: string;
  readonly kind: string;
  /** Version of the kind's body; absent means 1. A greater one than this program knows is kept, passed on and ignored. */
  readonly version?: number;
  readonly body: unknown;
}

/** An entry of a known kind with its body understood. */
export type KnownEntry = { [K in EntryKind]: Entry & { readonly kind: K; readonly body: EntryBodies[K] } }[EntryKind];

export type EntryOf<K extends EntryKind> = Extract<KnownEntry, { kind: K }>;
