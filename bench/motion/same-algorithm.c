/* The same pair, the same step control and the same events as the program's fast path, in C: what a compiler makes of it.
   use: same-algorithm cases.txt relative seconds repeats */
#include "hammer.h"
#include <time.h>

typedef struct {
  hammer ham;
  double time, step, error, relative, absolute[5];
  double y[5], trial[5], a[5], b[5], c[5], d[5], e[5], f[5], g[5], bend[20];
} stepper;

static void attempt(stepper *s) {
  const double h = s->step;
  double st[5];
  const double *y = s->y, *a = s->a, *b = s->b, *c = s->c, *d = s->d, *e = s->e, *f = s->f, *g = s->g;
  for (int i = 0; i < 5; i++) st[i] = y[i] + h * (1.0 / 5 * a[i]);
  hammer_rates(&s->ham, st, s->b);
  for (int i = 0; i < 5; i++) st[i] = y[i] + h * (3.0 / 40 * a[i] + 9.0 / 40 * b[i]);
  hammer_rates(&s->ham, st, s->c);
  for (int i = 0; i < 5; i++) st[i] = y[i] + h * (44.0 / 45 * a[i] + -56.0 / 15 * b[i] + 32.0 / 9 * c[i]);
  hammer_rates(&s->ham, st, s->d);
  for (int i = 0; i < 5; i++) st[i] = y[i] + h * (19372.0 / 6561 * a[i] + -25360.0 / 2187 * b[i] + 64448.0 / 6561 * c[i] + -212.0 / 729 * d[i]);
  hammer_rates(&s->ham, st, s->e);
  for (int i = 0; i < 5; i++) st[i] = y[i] + h * (9017.0 / 3168 * a[i] + -355.0 / 33 * b[i] + 46732.0 / 5247 * c[i] + 49.0 / 176 * d[i] + -5103.0 / 18656 * e[i]);
  hammer_rates(&s->ham, st, s->f);
  for (int i = 0; i < 5; i++) s->trial[i] = y[i] + h * (35.0 / 384 * a[i] + 500.0 / 1113 * c[i] + 125.0 / 192 * d[i] + -2187.0 / 6784 * e[i] + 11.0 / 84 * f[i]);
  hammer_rates(&s->ham, s->trial, s->g);
  double sum = 0;
  for (int i = 0; i < 5; i++) {
    const double big = fabs(y[i]) > fabs(s->trial[i]) ? fabs(y[i]) : fabs(s->trial[i]);
    const double r = h * (71.0 / 57600 * a[i] + -71.0 / 16695 * c[i] + 71.0 / 1920 * d[i] + -17253.0 / 339200 * e[i] + 22.0 / 525 * f[i] + -1.0 / 40 * g[i]) / (s->absolute[i] + s->relative * big);
    sum += r * r;
  }
  s->error = sqrt(sum * 0.2);
}

static void prepare_dense(stepper *s) {
  const double h = s->step;
  for (int i = 0; i < 5; i++) {
    const double rise = s->trial[i] - s->y[i], turn = h * s->a[i] - rise;
    s->bend[i] = rise;
    s->bend[5 + i] = turn;
    s->bend[10 + i] = rise - h * s->g[i] - turn;
    s->bend[15 + i] = h * (-12715105075.0 / 11282082432.0 * s->a[i] + 87487479700.0 / 32700410799.0 * s->c[i] + -10690763975.0 / 1880347072.0 * s->d[i] + 701980252875.0 / 199316789632.0 * s->e[i] + -1453857185.0 / 822651844.0 * s->f[i] + 69997945.0 / 29380423.0 * s->g[i]);
  }
}

static double dense_of(const stepper *s, double x, int i) {
  const double rest = 1 - x;
  return s->y[i] + x * (s->bend[i] + rest * (s->bend[5 + i] + x * (s->bend[10 + i] + rest * s->bend[15 + i])));
}

typedef struct { stepper *s; int what; double edge; } question;

static double ask(const question *k, double x) {
  stepper *s = k->s;
  double in[5], slopes[5];
  if (k->what == 0) return dense_of(s, x, 0) - s->ham.n[28];
  if (k->what == 1) return -dense_of(s, x, 1);
  if (k->what == 2) return dense_of(s, x, 2) - TURN;
  for (int i = 0; i < 5; i++) in[i] = dense_of(s, x, i);
  hammer_rates(&s->ham, in, slopes);
  return k->what == 3 ? s->ham.seen[3] : s->ham.seen[0] - k->edge;
}

static double locate(const question *k, double low, double high, double width) {
  double a = low, b = high, fa = ask(k, a), fb = ask(k, b);
  const double after = fb < 0 ? -1 : 1;
  int side = 0;
  for (int n = 0; n < 80 && fabs(b - a) > width && fb != 0; n++) {
    double c = fa == fb ? 0.5 * (a + b) : b - (fb * (b - a)) / (fb - fa);
    if (n > 40 || !((c > a && c < b) || (c < a && c > b))) c = 0.5 * (a + b);
    if (c == a || c == b) break;
    const double fc = ask(k, c);
    if (fc * after >= 0) {
      b = c; fb = fc;
      if (side == 1) fa *= 0.5;
      side = 1;
    } else {
      a = c; fa = fc;
      if (side == -1) fb *= 0.5;
      side = -1;
    }
  }
  return b;
}

static double factor_of(double error, double before) {
  const double sixteenth = sqrt(sqrt(sqrt(sqrt(error + 1e-30))));
  const double earlier = sqrt(sqrt(sqrt(sqrt(sqrt(before + 1e-30)))));
  const double f = (0.85 * earlier) / (sixteenth * sixteenth * sixteenth);
  return f < 0.2 ? 0.2 : f > 6 ? 6 : f;
}

static double refused_of(double error) {
  if (!(error < INFINITY)) return 0.25;
  const double sixteenth = sqrt(sqrt(sqrt(sqrt(error))));
  const double f = 0.75 / (sixteenth * sixteenth * sixteenth);
  return f < 0.1 ? 0.1 : f > 0.9 ? 0.9 : f;
}

static int region_of(const double *n, double q) { return q > n[23] ? 1 : q < n[24] ? -1 : 0; }

static double meeting(stepper *s) {
  const double struck = s->ham.n[28], now = s->trial[0] - struck;
  question gap = {s, 0, 0}, fall = {s, 1, 0};
  if (now < 0) {
    prepare_dense(s);
    double low = 0;
    if (s->y[0] - struck <= 0) {
      double place = 0.5;
      int n = 0;
      while (n < 50 && ask(&gap, place) <= 0) { place *= 0.5; n++; }
      if (n == 50) return 0;
      low = place;
    }
    return locate(&gap, low, 1, 1e-15);
  }
  if (s->y[1] < 0 && s->trial[1] > 0) {
    const double reach = s->step * (-s->y[1] > s->trial[1] ? -s->y[1] : s->trial[1]);
    const double least = now < s->y[0] - struck ? now : s->y[0] - struck;
    if (least > reach) return 2;
    prepare_dense(s);
    const double lowest = locate(&fall, 0, 1, 1e-15);
    if (ask(&gap, lowest) < 0) return locate(&gap, 0, lowest, 1e-15);
  }
  return 2;
}

static tally run(const cased *k, double relative, double seconds) {
  static const double sizes[5] = {0.02, 1, 1, 10, 10};
  stepper S, *s = &S;
  tally out = {0, 0, 0, 0, 0};
  memset(s, 0, sizeof S);
  memcpy(s->ham.n, k->n, sizeof k->n);
  const double *n = s->ham.n;
  s->relative = relative;
  for (int i = 0; i < 5; i++) { s->absolute[i] = sizes[i] * relative; s->y[i] = k->start[i]; }
  if (s->y[0] < n[28]) s->y[0] = n[28];
  hammer_rates(&s->ham, s->y, s->a);
  int region = region_of(n, s->ham.seen[0]), refused = 0;
  double length = 1e-4, before = 1e-4;
  while (s->time < seconds) {
    out.steps++;
    const double left = seconds - s->time;
    const int last = length >= left;
    s->step = last ? left : length;
    attempt(s);
    if (!(s->error <= 1)) { refused = 1; length = s->step * refused_of(s->error); if (!(length >= 1e-13)) exit(2); continue; }
    const double taken = s->step;
    const int region_now = region_of(n, s->ham.seen[0]);
    const double closing = s->ham.seen[2];
    double at = s->ham.stuck ? 2 : meeting(s);
    int what = at <= 1 ? 1 : 0;
    if (s->ham.stuck && s->ham.seen[3] < 0) {
      question q = {s, 3, 0};
      prepare_dense(s);
      at = locate(&q, 0, 1, 1e-12);
      what = 2;
    }
    if (region_now != region) {
      question q = {s, 4, region == 1 || (region == 0 && region_now == 1) ? n[23] : n[24]};
      prepare_dense(s);
      const double cross = locate(&q, 0, 1, 1e-12);
      if (cross < at) { at = cross; what = 3; }
    }
    if (!refused || s->error > 1e-4) {
      const double f = factor_of(s->error, before);
      length = taken * (refused && f > 1 ? 1 : f);
    }
    before = s->error > 1e-4 ? s->error : 1e-4;
    refused = 0;
    if (what == 0) {
      if (s->trial[2] >= TURN) {
        question q = {s, 2, 0};
        prepare_dense(s);
        out.tops += locate(&q, 0, 1, 1e-12) >= 0;
        s->trial[2] -= TURN;
      } else if (s->trial[2] < 0) s->trial[2] += TURN;
      memcpy(s->y, s->trial, sizeof s->y);
      memcpy(s->a, s->g, sizeof s->a);
      s->time += taken;
      if (last) s->time = seconds;
      continue;
    }
    double in[5];
    for (int i = 0; i < 5; i++) in[i] = dense_of(s, at, i);
    if (in[2] >= TURN && s->y[2] < TURN) { out.tops++; in[2] -= TURN; }
    memcpy(s->y, in, sizeof in);
    s->time += at * taken;
    if (what == 1) {
      const double speed = s->y[1] < 0 ? -s->y[1] : 0, e = restitution(n, speed);
      s->y[0] = n[28];
      s->y[1] = e * speed;
      hammer_rates(&s->ham, s->y, s->a);
      if (e * speed < STICKING && s->ham.seen[1] < n[1]) { s->y[1] = 0; s->ham.stuck = 1; }
      if (speed > 0.02) { out.beats++; out.last_die = s->time; out.last_speed = speed; }
    } else if (what == 2) s->ham.stuck = 0;
    else {
      if (region == 0 && fabs(closing) > 0.02) out.beats++;
      region = region_now;
      if (region != 0 && length > 3e-4) length = 3e-4;
    }
    hammer_rates(&s->ham, s->y, s->a);
    if (what != 3) region = region_of(n, s->ham.seen[0]);
  }
  return out;
}

int main(int argc, char **argv) {
  cased *cases;
  if (argc < 5) return 1;
  const int count = read_cases(argv[1], &cases);
  const double relative = atof(argv[2]), seconds = atof(argv[3]);
  const int repeats = atoi(argv[4]);
  for (int i = 0; i < count; i++) {
    tally t = run(&cases[i], relative, seconds);
    const clock_t from = clock();
    for (int r = 0; r < repeats; r++) t = run(&cases[i], relative, seconds);
    printf("%d %.9f %ld %ld %ld %.9f %.9f\n", i, (double)(clock() - from) / CLOCKS_PER_SEC / repeats, t.beats, t.tops, t.steps, t.last_die, t.last_speed);
  }
  return 0;
}
