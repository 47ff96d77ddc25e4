"""The oven network of engine/src/coals in SciPy: one run, several methods, their times and states.

Reads one case as JSON on standard input, writes JSON. The equations are written twice, plainly in
floats and vectorised over columns, because for three unknowns plain floats are the faster Python.
"""

import json
import math
import sys
import time

import numpy
import scipy
from scipy.integrate import solve_ivp

SIGMA = 5.670374419e-8


def film_air(xp, surface, air, pressure):
    film = (surface + air) / 2
    power = film * xp.sqrt(film)
    viscosity = 1.458e-6 * power / (film + 110.4)
    conductivity = 2.64638e-3 * power / (film + 245.4 * xp.exp(-12 * math.log(10) / film))
    kinematic = viscosity * 287.053 * film / pressure
    return film, conductivity, kinematic, viscosity * 1006 / conductivity


def rayleigh(film, kinematic, prandtl, difference, length):
    return 9.80665 * abs(difference) / film * length**3 * prandtl / kinematic**2


def lid_coefficient(xp, case, surface):
    air, wind, diameter = case["airKelvin"], case["windMetresPerSecond"], case["lidDiameter"]
    film, conductivity, kinematic, prandtl = film_air(xp, surface, air, case["pressurePascals"])
    length = diameter / 4
    number = rayleigh(film, kinematic, prandtl, surface - air, length)
    natural = xp.where(number < 1e7, 0.54 * number**0.25, 0.15 * number ** (1 / 3))
    natural = natural * conductivity / length
    if wind <= 0:
        return natural
    reynolds = wind * diameter / kinematic
    forced = 0.664 * xp.sqrt(reynolds) * prandtl ** (1 / 3) * conductivity / diameter
    return (natural**3 + forced**3) ** (1 / 3)


def wall_coefficient(xp, case, surface):
    air, wind, height = case["airKelvin"], case["windMetresPerSecond"], case["wallHeight"]
    film, conductivity, kinematic, prandtl = film_air(xp, surface, air, case["pressurePascals"])
    number = rayleigh(film, kinematic, prandtl, surface - air, height)
    nusselt = 0.387 * number ** (1 / 6) / (1 + (0.492 / prandtl) ** (9 / 16)) ** (8 / 27)
    natural = (0.825 + nusselt) ** 2 * conductivity / height
    if wind <= 0:
        return natural
    diameter = case["wallDiameter"]
    reynolds = wind * diameter / kinematic
    part = 0.62 * xp.sqrt(reynolds) * prandtl ** (1 / 3) / (1 + (0.4 / prandtl) ** (2 / 3)) ** 0.25
    forced = 0.3 + part * (1 + (reynolds / 282000) ** (5 / 8)) ** 0.8
    forced = forced * conductivity / diameter
    return (natural**3 + forced**3) ** (1 / 3)


class Floats:
    """The few names that the equations ask of numpy, for plain floats."""

    sqrt, exp, tanh = staticmethod(math.sqrt), staticmethod(math.exp), staticmethod(math.tanh)
    minimum, maximum = staticmethod(min), staticmethod(max)

    @staticmethod
    def where(condition, yes, no):
        return yes if condition else no


def rates(xp, case, span, seconds, lid, wall, floor, food):
    """Watts into lid, wall, floor and food; `food` is a temperature."""
    burnt = span["burnt"] + seconds / case["burnoutSeconds"]
    strength = math.sqrt(max(0.0, 1 - burnt)) / case["chartMean"]
    areas = case["lidArea"] + case["wallArea"] + case["floorArea"]
    inside = case["emissivityInside"] * SIGMA
    four = (lid**4, wall**4, floor**4)
    radiated = case["lidArea"] * four[0] + case["wallArea"] * four[1] + case["floorArea"] * four[2]
    taken = 0 * lid
    if span["isLoaded"]:
        taken = load_watts(xp, case, radiated / areas, 1 / (inside * areas), food)
    cavity = (radiated - taken / inside) / areas
    air, outside = case["airKelvin"], case["emissivityOutside"] * SIGMA
    covering = span["above"] * min(1.0, max(0.0, (1 - burnt) / 0.5))
    free = case["lidArea"] * (1 - min(0.9, covering * case["cover"] / case["lidArea"]))
    free += case["rimArea"]
    lost = (
        free * (lid_coefficient(xp, case, lid) * (lid - air) + outside * (four[0] - air**4)),
        (case["wallArea"] + case["extraArea"])
        * (wall_coefficient(xp, case, wall) * (wall - air) + outside * (four[1] - air**4)),
    )
    hot = case["coalKelvin"] ** 4
    spread = hot - case["chartAirKelvin"] ** 4
    above = span["above"] * strength * case["lidWatts"] * (hot - four[0]) / spread
    below = span["below"] * strength * case["floorWatts"] * (hot - four[2]) / spread
    along = (case["lidToWall"] * (lid - wall), case["floorToWall"] * (floor - wall))
    return (
        (above - lost[0] - along[0] - inside * case["lidArea"] * (four[0] - cavity)),
        (along[0] + along[1] - lost[1] - inside * case["wallArea"] * (four[1] - cavity)),
        (below - along[1] - inside * case["floorArea"] * (four[2] - cavity)),
        taken,
    )


def load_watts(xp, case, fourth, per_watt, food):
    """What the load takes of a cavity that is the cooler for it: the cap, or a few Newton steps."""
    most, slope = case["loadMost"], case["loadPerKelvin"]
    watts = most + 0 * food
    for _ in range(6):
        cavity = xp.maximum(1e9, fourth - watts * per_watt)
        kelvin = xp.sqrt(xp.sqrt(cavity))
        miss = slope * (kelvin - food) - watts
        watts = watts + miss / (1 + slope * per_watt * kelvin / (4 * cavity))
    return xp.minimum(most, watts)


def right_hand_side(case, span, vectorised):
    capacities = (case["lidCapacity"], case["wallCapacity"], case["floorCapacity"])
    heat, start, boil = case["loadCapacity"], case["loadStartKelvin"], case["loadBoilKelvin"]

    def plain(seconds, state):
        lid, wall, floor, joules = state.tolist()
        food = min(boil, start + joules / heat)
        flows = rates(Floats, case, span, seconds, lid, wall, floor, food)
        return [flows[0] / capacities[0], flows[1] / capacities[1], flows[2] / capacities[2], flows[3]]

    def columns(seconds, state):
        food = numpy.minimum(boil, start + state[3] / heat)
        flows = rates(numpy, case, span, seconds, state[0], state[1], state[2], food)
        return numpy.stack([flows[i] / (capacities + (1,))[i] for i in range(4)])

    return columns if vectorised else plain


def run(case, method, vectorised):
    state = numpy.array(case["startKelvin"] + [0.0])
    kelvins, evaluations = [], 0
    for span in case["spans"]:
        wanted = [t - span["from"] for t in case["at"] if span["from"] < t <= span["to"]]
        extra = {"vectorized": True} if vectorised and method != "LSODA" else {}
        length = span["to"] - span["from"]
        asked = wanted if wanted and wanted[-1] == length else wanted + [length]
        # joules are told apart by their size: a kelvin of the load is its heat capacity
        absolute = numpy.array([1, 1, 1, case["loadCapacity"]]) * case["absoluteTolerance"]
        solved = solve_ivp(
            right_hand_side(case, span, vectorised), (0, length), state, method=method,
            t_eval=asked, rtol=case["relativeTolerance"], atol=absolute, **extra,
        )
        if not solved.success:
            raise SystemExit(f"{method}: {solved.message}")
        kelvins.extend(solved.y[:, : len(wanted)].T.tolist())
        evaluations += solved.nfev
        state = solved.y[:, -1]
    return kelvins, evaluations


def main():
    case = json.load(sys.stdin)
    answer = {"scipy": scipy.__version__, "numpy": numpy.__version__, "runs": []}
    for method in ("LSODA", "Radau"):
        for vectorised in (False, True):
            run(case, method, vectorised)
            times = []
            for _ in range(case["repeats"]):
                began = time.perf_counter()
                kelvins, evaluations = run(case, method, vectorised)
                times.append(1000 * (time.perf_counter() - began))
            times.sort()
            answer["runs"].append({
                "method": method,
                "rightHandSide": "vectorised" if vectorised else "plain floats",
                "milliseconds": times[len(times) // 2],
                "evaluations": evaluations,
                "states": kelvins,
            })
    json.dump(answer, sys.stdout)


main()
