#!/usr/bin/env python3
"""Mold-loop reference model for SimPy (old 2.x API; also runs on SimPy 3/4 when that is what is installed).

N molds circulate:  wax -> gel booth -> laminate -> cure (pure delay, no server) -> pull -> [every k-th pull: strip] -> wax
Every station is FCFS with c identical servers and exponential times; cure may be constant (default) or exponential.
No calendars, no breakdowns, no setup: the exact answer is the closed product-form network (MVA) (Reiser & Lavenberg 1980).

Prints one line of JSON per run.  Time measured = wall clock of the simulate call only (perf_counter), single thread.
 engine events  = event notices popped by SimPy's main loop; in 2.3.1 each request, hold and release of one visit
                  costs exactly one notice, so one mold cycle costs 4*3 + 1 + 3/k notices (13.6 at k=5).
 model events   = activity completions (service ends + cure ends) = 5 + 1/k per cycle (5.2 at k=5); this is the
                  number to compare with a simulator that schedules one event per activity.
"""
import argparse, json, random, time, sys, platform

P = argparse.ArgumentParser()
P.add_argument('--n', type=int, default=8, help='molds')
P.add_argument('--k', type=int, default=5, help='strip every k-th pull; 0 = never')
P.add_argument('--strip', choices=['count', 'prob'], default='count', help='deterministic counter per mold, or probability 1/k')
P.add_argument('--cure', choices=['det', 'exp'], default='det')
P.add_argument('--mean', default='2,3,10,24,2,6', help='mean hours wax,gel,lam,cure,pull,strip')
P.add_argument('--servers', default='2,2,3,1,1', help='servers wax,gel,lam,pull,strip')
P.add_argument('--hours', type=float, default=1.0e6, help='measured horizon in model hours')
P.add_argument('--warm', type=float, default=2000.0, help='model hours discarded first (also outside the timing)')
P.add_argument('--seed', type=int, default=1)
P.add_argument('--count', action='store_true', help='count engine notices by stepping (slower; not for timing)')
A = P.parse_args()
mean = [float(x) for x in A.mean.split(',')]
cap = [int(x) for x in A.servers.split(',')]
W, G, L, C, PU, ST = range(6)
rnd = random.Random(A.seed)
exp = rnd.expovariate
rate = [1.0 / m for m in mean]
done = [0] * 6        # completions per station
resid = [0.0] * 6     # summed residence (queue + service) per station
busy = [0.0] * 6      # summed service time per station

def reset():
    for v in (done, resid, busy):
        for i in range(6):
            v[i] = 0 if v is done else 0.0

try:
    from SimPy.Simulation import Simulation, Process, Resource, hold, request, release
    import SimPy
    VERSION = 'SimPy ' + SimPy.__version__
    OLD = True
except ImportError:
    import simpy
    VERSION = 'simpy ' + simpy.__version__
    OLD = False

def visit_times(st):
    return exp(rate[st])

def cure_time():
    return mean[C] if A.cure == 'det' else exp(rate[C])

if OLD:
    sim = Simulation()
    sim.initialize()
    res = {s: Resource(capacity=c, sim=sim) for s, c in zip((W, G, L, PU, ST), cap)}

    class Mold(Process):
        def life(self):
            pulls = 0
            while True:
                for st in (W, G, L):
                    r = res[st]
                    t0 = sim.now()
                    yield request, self, r
                    t = visit_times(st)
                    yield hold, self, t
                    yield release, self, r
                    done[st] += 1; busy[st] += t; resid[st] += sim.now() - t0
                t = cure_time()
                yield hold, self, t
                done[C] += 1; busy[C] += t; resid[C] += t
                todo = (PU,)
                pulls += 1
                if A.k and (pulls % A.k == 0 if A.strip == 'count' else rnd.random() * A.k < 1.0):
                    todo = (PU, ST)
                for st in todo:
                    r = res[st]
                    t0 = sim.now()
                    yield request, self, r
                    t = visit_times(st)
                    yield hold, self, t
                    yield release, self, r
                    done[st] += 1; busy[st] += t; resid[st] += sim.now() - t0

    for i in range(A.n):
        m = Mold(name='m%d' % i, sim=sim)
        sim.activate(m, m.life())

    def run(until):
        sim._stop = False
        sim.simulate(until=until)

    def run_count(until):
        n = 0
        while sim.peek() <= until:
            sim.step(); n += 1
        return n
else:
    env = simpy.Environment()
    res = {s: simpy.Resource(env, c) for s, c in zip((W, G, L, PU, ST), cap)}

    def life():
        pulls = 0
        while True:
            for st in (W, G, L):
                t0 = env.now
                with res[st].request() as q:
                    yield q
                    t = visit_times(st)
                    yield env.timeout(t)
                done[st] += 1; busy[st] += t; resid[st] += env.now - t0
            t = cure_time()
            yield env.timeout(t)
            done[C] += 1; busy[C] += t; resid[C] += t
            todo = (PU,)
            pulls += 1
            if A.k and (pulls % A.k == 0 if A.strip == 'count' else rnd.random() * A.k < 1.0):
                todo = (PU, ST)
            for st in todo:
                t0 = env.now
                with res[st].request() as q:
                    yield q
                    t = visit_times(st)
                    yield env.timeout(t)
                done[st] += 1; busy[st] += t; resid[st] += env.now - t0

    for i in range(A.n):
        env.process(life())

    def run(until):
        env.run(until=until)

    def run_count(until):
        n = 0
        while env.peek() <= until:
            env.step(); n += 1
        return n

run(A.warm)
reset()
end = A.warm + A.hours
notices = None
t0 = time.perf_counter(); c0 = time.process_time()
if A.count:
    notices = run_count(end)
else:
    run(end)
wall = time.perf_counter() - t0; cpu = time.process_time() - c0
pulls = done[PU]
model = sum(done)
srv = {W: cap[0], G: cap[1], L: cap[2], PU: cap[3], ST: cap[4]}
out = dict(lib=VERSION, py=platform.python_version(), n=A.n, k=A.k, strip=A.strip, cure=A.cure, seed=A.seed, hours=A.hours,
           pulls=pulls, X=pulls / A.hours, util=[round(busy[s] / (srv[s] * A.hours), 6) for s in (W, G, L, PU, ST)],
           Q=[round(resid[s] / A.hours, 6) for s in range(6)],
           wall_s=round(wall, 3), cpu_s=round(cpu, 3), model_events=model, model_ev_per_s=round(model / wall), pulls_per_s=round(pulls / wall),
           engine_notices=notices, engine_ev_per_s=(round(notices / wall) if notices else round((12 + 1 + (3.0 / A.k if A.k else 0)) * pulls / wall)))
print(json.dumps(out))
