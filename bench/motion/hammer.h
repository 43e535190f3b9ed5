/* The hammer's equations in C, line for line as src/derived/motion/hammer-rates.ts has them, for the bench only. */
#ifndef HAMMER_H
#define HAMMER_H
#include <math.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#define TURN 6.283185307179586
#define STICKING 0.004

typedef struct {
  double n[64];
  int stuck;
  double seen[4]; /* q, force, closing, contact */
} hammer;

static inline void sine_cosine(double angle, double *sine, double *cosine) {
  const double quarters = floor(angle * 0.6366197723675814 + 0.5);
  const double x = angle - quarters * 1.5707963109016418 - quarters * 1.5893254773528197e-8;
  const double z = x * x;
  const double z2 = z * z, z4 = z2 * z2;
  const double s = x + x * z * (-1.0 / 6 + z * (1.0 / 120) + z2 * (-1.0 / 5040 + z * (1.0 / 362880)) + z4 * (-1.0 / 39916800 + z * (1.0 / 6227020800.0) - z2 * (1.0 / 1307674368000.0)));
  const double c = 1 - 0.5 * z + z2 * (1.0 / 24 - z * (1.0 / 720) + z2 * (1.0 / 40320 - z * (1.0 / 3628800)) + z4 * (1.0 / 479001600 - z * (1.0 / 87178291200.0) + z2 * (1.0 / 20922789888000.0)));
  const int quarter = (int)quarters & 3;
  const double sign = quarter & 2 ? -1 : 1;
  if (quarter & 1) {
    *sine = sign * c;
    *cosine = -sign * s;
  } else {
    *sine = sign * s;
    *cosine = sign * c;
  }
}

static inline double soft_sign(double x) { return x / sqrt(1 + x * x); }

static inline double soft_sign_far(double x) {
  if (x < 100) return soft_sign(x);
  const double i = 1 / (x * x);
  return 1 - i * (0.5 - i * (0.375 - i * 0.3125));
}

static inline double toggle_force(const double *n, double q) {
  const double d = n[40], down = n[41] + q;
  const double square = d * d + down * down, sum = square + n[44], half = 0.5 / square;
  const double root = sqrt(4 * n[45] * square - sum * sum);
  const double bx = (sum * d - root * down) * half, by = (sum * down + root * d) * half;
  const double sin_arm = bx * n[42], cos_arm = by * n[42];
  const double sin_link = (down - by) * n[43], cos_link = (d - bx) * n[43];
  const double delta = n[46] * (sin_arm * n[47] + cos_arm * n[48] - n[49]);
  double spring = n[50] * (n[51] + delta);
  const double beyond = delta - n[53];
  if (beyond > 0) spring += n[52] * beyond;
  const double upper = cos_arm * n[47] - sin_arm * n[48];
  return (spring * n[46] * upper * sin_link * n[42]) / (cos_link * cos_arm - sin_link * sin_arm);
}

static inline void hammer_rates(hammer *ham, const double *y, double *d) {
  const double *n = ham->n;
  double *seen = ham->seen;
  const double v = y[1], w = y[3], drive = y[4];
  double sine, cosine;
  sine_cosine(y[2], &sine, &cosine);
  const double rs = n[2] * sine, rc = n[2] * cosine;
  const double reach = sqrt(n[3] - rs * rs), inverse = 1 / reach, tilt = rs * inverse;
  const double s1 = rs - tilt * rc;
  const double s2 = rc - (rc * rc - rs * rs) * inverse - tilt * tilt * rc * rc * inverse;
  const double q = n[4] - reach + rc - y[0];
  const double rate = -s1 * w - v;
  const double band = n[27];
  double slack = q > band ? q - band : q < -band ? q + band : 0;
  slack = slack < n[25] ? n[25] : slack > n[26] ? n[26] : slack;
  const double spring = toggle_force(n, slack);
  const double hysteresis = n[19] * fabs(spring) * soft_sign(rate * n[20]);
  double stop = 0;
  if (q > n[23]) {
    stop = n[21] * (q - n[23]) * (1 + n[22] * rate);
    if (stop < 0) stop = 0;
  } else if (q < n[24]) {
    stop = n[21] * (q - n[24]) * (1 - n[22] * rate);
    if (stop > 0) stop = 0;
  }
  const double force = spring + hysteresis + stop;
  const double rub = n[15] + n[16] * fabs(force * tilt);
  const double wayward = soft_sign(v * n[17]);
  const double torque_clutch = n[12] * soft_sign((drive - w) * n[13]);
  const double lag = 1 - drive * n[11];
  const double torque_motor = (n[9] * lag) / (lag * lag + n[10]);
  const double turning = soft_sign_far(10 * w);
  d[2] = w;
  d[3] = (torque_clutch - n[14] * turning + s1 * (force + n[7]) - n[6] * s1 * s2 * w * w) / (n[5] + n[6] * s1 * s1);
  d[4] = (torque_motor - torque_clutch) * n[8];
  seen[0] = q;
  seen[1] = force;
  seen[2] = rate;
  if (ham->stuck) {
    d[0] = 0;
    d[1] = 0;
    seen[3] = n[1] - force;
  } else {
    d[0] = v;
    d[1] = (force - n[1] - rub * wayward - n[18] * v) * n[35];
  }
}

/* What a run leaves for comparison. */
typedef struct {
  long beats, tops, steps;
  double last_die, last_speed;
} tally;

typedef struct {
  double n[64], start[5];
} cased;

/* cases file: count, then for each 64 numbers and 5 of the start */
static int read_cases(const char *path, cased **out) {
  FILE *f = fopen(path, "r");
  int count = 0;
  if (!f || fscanf(f, "%d", &count) != 1) { fprintf(stderr, "cannot read %s\n", path); exit(1); }
  cased *c = malloc(sizeof(cased) * (size_t)count);
  for (int i = 0; i < count; i++) {
    for (int j = 0; j < 64; j++) if (fscanf(f, "%lf", &c[i].n[j]) != 1) exit(1);
    for (int j = 0; j < 5; j++) if (fscanf(f, "%lf", &c[i].start[j]) != 1) exit(1);
  }
  fclose(f);
  *out = c;
  return count;
}

static inline double restitution(const double *n, double speed) {
  if (speed <= 0) return n[29];
  const double e = n[30] / speed;
  return e < n[29] ? e : n[29];
}
#endif
