/** Jobs that only look or judge: they may clear a finding or make it worse, and mend nothing. */
export const LOOKING_JOBS: readonly string[] = ['frame.dye-test', 'frame.have-repair-judged', 'clutch.test-for-asbestos', 'trial.find-second-sound'];

/** The job that proves all others; it cures nothing itself. */
export const TRIAL_JOB = 'trial.run';

/** The job that moves the ram out of the way of a stack that grows, and the one that sets the gap at the end. */
export const ROOM_JOB = 'rod.make-room';
export const GAP_JOB = 'rod.set-gap';
