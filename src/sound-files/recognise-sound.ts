/** Kinds of file that are told apart by their first bytes. */
export type SoundKind =
  | 'wav' | 'riff-other' | 'wave64' | 'mpeg-4' | '3gpp' | 'webm' | 'ogg' | 'flac' | 'mp3' | 'aac' | 'amr' | 'aiff' | 'caf' | 'mpeg-ts'
  | 'picture' | 'document' | 'text' | 'empty' | 'unknown';

export const KIND_WORDS: Record<SoundKind, string> = {
  wav: 'a WAV recording', 'riff-other': 'a RIFF file that is no WAV recording', wave64: 'a WAV recording of the 64-bit kind', 'mpeg-4': 'an MPEG-4 file (M4A, MP4 or MOV)',
  '3gpp': 'a 3GP file', webm: 'a WebM or Matroska file', ogg: 'an Ogg file', flac: 'a FLAC recording', mp3: 'an MP3 recording', aac: 'a bare AAC recording',
  amr: 'an AMR recording', aiff: 'an AIFF recording', caf: 'a CAF recording', 'mpeg-ts': 'an MPEG transport stream',
  picture: 'a picture', document: 'a document', text: 'a text', empty: 'empty', unknown: 'of no kind that is known here',
};

/** Whether the kind may hold sound at all. */
export const maySound = (kind: SoundKind): boolean => !['picture', 'document', 'text', 'empty'].includes(kind);

/**
 * What a file is, by its first bytes and not by its name.
 * @param bytes the beginning, 4 kB are plenty
 */
export function recogniseSound(bytes: Uint8Array): SoundKind {
  if (bytes.length === 0) return 'empty';
  const at = (offset: number, letters: string): boolean => [...letters].every((letter, i) => bytes[offset + i] === letter.charCodeAt(0));
  if (at(0, 'RIFF') || at(0, 'RIFX')) return at(8, 'WAVE') && at(0, 'RIFF') ? 'wav' : at(8, 'WEBP') ? 'picture' : 'riff-other';
  if (at(0, 'RF64') || at(0, 'BW64')) return 'wave64';
  if (at(4, 'ftyp')) return at(8, '3g') ? '3gpp' : at(8, 'heic') || at(8, 'avif') || at(8, 'mif1') ? 'picture' : 'mpeg-4';
  if (at(4, 'moov') || at(4, 'mdat') || at(4, 'wide')) return 'mpeg-4';
  if (bytes[0] === 0x1a && bytes[1] === 0x45 && bytes[2] === 0xdf && bytes[3] === 0xa3) return 'webm';
  if (at(0, 'OggS')) return 'ogg';
  if (at(0, 'fLaC')) return 'flac';
  if (at(0, '#!AMR')) return 'amr';
  if (at(0, 'FORM') && (at(8, 'AIFF') || at(8, 'AIFC'))) return 'aiff';
  if (at(0, 'caff')) return 'caf';
  if (at(0, 'ID3')) return 'mp3';
  if (bytes[0] === 0xff && (bytes[1]! & 0xf6) === 0xf0) return 'aac';
  if (bytes[0] === 0xff && (bytes[1]! & 0xe0) === 0xe0 && (bytes[1]! & 0x06) !== 0) return 'mp3';
  if (bytes[0] === 0x47 && bytes[188] === 0x47) return 'mpeg-ts';
  if ((bytes[0] === 0xff && bytes[1] === 0xd8) || at(1, 'PNG') || at(0, 'GIF8')) return 'picture';
  if (at(0, '%PDF') || at(0, 'PK\u0003\u0004')) return 'document';
  return looksWritten(bytes) ? 'text' : 'unknown';
}

/** Whether the bytes read as text: hardly any control characters, and most of them letters, digits and blanks. */
function looksWritten(bytes: Uint8Array): boolean {
  const head = bytes.subarray(0, 512);
  let [controls, plain] = [0, 0];
  for (const byte of head) {
    if (byte < 32 && byte !== 9 && byte !== 10 && byte !== 13) controls++;
    else if (byte < 127) plain++;
  }
  return controls === 0 && plain > 0.8 * head.length;
}
