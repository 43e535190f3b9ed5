/** Name of a value or look with its point on the part: `main-bearings.clearance@front`. */
export const valueName = (id: string, at: string | undefined): string => (at === undefined ? id : `${id}@${at}`);
