/** Rated powers in which motors are sold, hp (as NEMA MG 1 has them) and kW (as IEC 60072 has them). */
export const MOTOR_RATINGS = { horsepower: [0.5, 0.75, 1, 1.5, 2, 3, 5, 7.5, 10, 15, 20, 25], kilowatts: [0.37, 0.55, 0.75, 1.1, 1.5, 2.2, 3, 4, 5.5, 7.5, 11, 15, 18.5], source: 'from-memory' } as const;
