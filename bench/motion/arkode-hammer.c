/* The same hammers through SUNDIALS ARKODE, explicit Dormand-Prince 5(4), with its own root finding.
   use: arkode-hammer cases.txt relative seconds repeats */
#include "hammer.h"
#include <arkode/arkode_erkstep.h>
#include <nvector/nvector_serial.h>
#include <sundials/sundials_types.h>
#include <time.h>

typedef struct {
  hammer ham;
  int region;
  double hit;
} rig;

static int rates(realtype t, N_Vector y, N_Vector d, void *data) {
  (void)t;
  hammer_rates(&((rig *)data)->ham, N_VGetArrayPointer(y), N_VGetArrayPointer(d));
  return 0;
}

/* 0 die or lift-off, 1 top dead centre, 2 joint edge, 3 upper edge; an edge or surface just left counts as left until it is. */
static int roots(realtype t, N_Vector y, realtype *g, void *data) {
  rig *r = data;
  double slopes[5], sine, cosine;
  const double *v = N_VGetArrayPointer(y);
  const double *n = r->ham.n;
  if (r->ham.stuck) {
    hammer_rates(&r->ham, v, slopes);
    g[0] = r->ham.seen[3];
  } else g[0] = t - r->hit < 1e-7 ? 1 : v[0] - n[28];
  g[1] = v[2] - TURN;
  /* Only what the edges need of the geometry, so that root finding costs no more than it must. */
  sine_cosine(v[2], &sine, &cosine);
  const double rs = n[2] * sine, q = n[4] - sqrt(n[3] - rs * rs) + n[2] * cosine - v[0];
  g[2] = q - n[23];
  g[3] = q - n[24];
  return 0;
}

static tally run(const cased *k, double relative, double seconds, SUNContext context) {
  static const double sizes[5] = {0.02, 1, 1, 10, 10};
  tally out = {0, 0, 0, 0, 0};
  rig R, *r = &R;
  memset(r, 0, sizeof R);
  memcpy(r->ham.n, k->n, sizeof k->n);
  r->hit = -1;
  const double *n = r->ham.n;
  N_Vector y = N_VNew_Serial(5, context), absolute = N_VNew_Serial(5, context);
  double *v = N_VGetArrayPointer(y), slopes[5];
  for (int i = 0; i < 5; i++) { v[i] = k->start[i]; NV_Ith_S(absolute, i) = sizes[i] * relative; }
  double t = 0;
  void *ark = ERKStepCreate(rates, t, y, context);
  ERKStepSetTableNum(ark, ARKODE_DORMAND_PRINCE_7_4_5);
  ERKStepSVtolerances(ark, relative, absolute);
  ERKStepSetUserData(ark, r);
  ERKStepRootInit(ark, 4, roots);
  int directions[4] = {-1, 1, 0, 0};
  ERKStepSetRootDirection(ark, directions);
  ERKStepSetNoInactiveRootWarn(ark);
  ERKStepSetMaxNumSteps(ark, 1000000);
  ERKStepSetStopTime(ark, seconds);
  hammer_rates(&r->ham, v, slopes);
  r->region = r->ham.seen[0] > n[23] ? 1 : r->ham.seen[0] < n[24] ? -1 : 0;
  while (t < seconds) {
    const int code = ERKStepEvolve(ark, seconds, y, &t, ARK_NORMAL);
    if (code < 0) { fprintf(stderr, "ARKODE stopped with %d at %g\n", code, t); exit(2); }
    if (code != ARK_ROOT_RETURN) continue;
    int found[4];
    ERKStepGetRootInfo(ark, found);
    if (found[1]) { v[2] -= TURN; out.tops++; }
    if (found[0]) {
      if (r->ham.stuck) r->ham.stuck = 0;
      else {
        const double speed = v[1] < 0 ? -v[1] : 0, e = restitution(n, speed);
        v[0] = n[28];
        v[1] = e * speed;
        hammer_rates(&r->ham, v, slopes);
        if (e * speed < STICKING && r->ham.seen[1] < n[1]) { v[1] = 0; r->ham.stuck = 1; }
        if (speed > 0.02) { out.beats++; out.last_die = t; out.last_speed = speed; }
        r->hit = t;
      }
    }
    if (found[2] || found[3]) {
      hammer_rates(&r->ham, v, slopes);
      if (r->region == 0) { if (fabs(r->ham.seen[2]) > 0.02) out.beats++; r->region = found[2] ? 1 : -1; }
      else r->region = 0;
    }
    /* The step in hand is offered again, as the program does, so that it has not to find its length anew. */
    double step;
    ERKStepGetCurrentStep(ark, &step);
    ERKStepReset(ark, t, y);
    if ((found[2] || found[3]) && r->region != 0 && step > 3e-4) step = 3e-4;
    ERKStepSetInitStep(ark, step);
  }
  long steps;
  ERKStepGetNumSteps(ark, &steps);
  out.steps = steps;
  ERKStepFree(&ark);
  N_VDestroy(y);
  N_VDestroy(absolute);
  return out;
}

int main(int argc, char **argv) {
  cased *cases;
  if (argc < 5) return 1;
  const int count = read_cases(argv[1], &cases);
  const double relative = atof(argv[2]), seconds = atof(argv[3]);
  const int repeats = atoi(argv[4]);
  SUNContext context;
  SUNContext_Create(NULL, &context);
  for (int i = 0; i < count; i++) {
    tally t = run(&cases[i], relative, seconds, context);
    const clock_t from = clock();
    for (int k = 0; k < repeats; k++) t = run(&cases[i], relative, seconds, context);
    printf("%d %.9f %ld %ld %ld %.9f %.9f\n", i, (double)(clock() - from) / CLOCKS_PER_SEC / repeats, t.beats, t.tops, t.steps, t.last_die, t.last_speed);
  }
  return 0;
}
