// The same plate by finite volumes on a whole polar grid: rings x sectors, Crank-Nicolson after a
// soft start (Rannacher), its matrix factorised once. Only for the bench, and apart from the engine:
// own coverage of the coals, own matrix, own solver.

export interface VolumePlate {
  readonly radius: number; // m
  readonly conductance: number; // conductivity x thickness [W/K]
  readonly capacity: number; // J/m2K
  readonly loss: number; // both faces [W/m2K]
}

export interface VolumeCoal {
  readonly radius: number;
  readonly angle: number;
  readonly side: number;
  readonly watts: number;
}

export interface Volumes {
  readonly rings: number;
  readonly sectors: number;
  /** Watts into each cell, [ring][sector]. */
  readonly flux: (coals: readonly VolumeCoal[]) => Float64Array;
  /** So many steps under a flux, warm or from cold. */
  readonly later: (kelvins: Float64Array, flux: Float64Array, steps: number) => Float64Array;
  readonly softStart: (kelvins: Float64Array, flux: Float64Array) => Float64Array;
  readonly at: (kelvins: Float64Array, radius: number, sector: number) => number;
}

const SAMPLES = 6; // each way in a cell, for its share under a coal

export function polarVolumes(
  plate: VolumePlate,
  grid: { readonly rings: number; readonly sectors: number; readonly stepSeconds: number },
): Volumes {
  const { rings, sectors, stepSeconds } = grid;
  const width = plate.radius / rings;
  const slice = (2 * Math.PI) / sectors;
  const area = (ring: number) => (ring + 0.5) * width * width * slice;
  const outwards = (ring: number) => plate.conductance * (ring + 1) * slice;
  const round = (ring: number) => plate.conductance / ((ring + 0.5) * slice);
  // Sectors folded (0, last, 1, last - 1, ...), so that neighbours are at most two slots apart.
  const slot = (sector: number) =>
    sector < sectors / 2 ? 2 * sector : 2 * (sectors - 1 - sector) + 1;
  const index = (ring: number, sector: number) => slot(sector) * rings + ring;
  const size = rings * sectors;
  const band = 2 * rings;

  const eachCell = (visit: (ring: number, sector: number) => void) => {
    for (let sector = 0; sector < sectors; sector += 1)
      for (let ring = 0; ring < rings; ring += 1) visit(ring, sector);
  };

  /** What the plate loses and passes on, as a product with the temperatures. */
  const lossOf = (kelvins: Float64Array): Float64Array => {
    const loss = new Float64Array(size);
    eachCell((ring, sector) => {
      const own = index(ring, sector);
      const after = index(ring, (sector + 1) % sectors);
      loss[own] = (loss[own] ?? 0) + plate.loss * area(ring) * kelvins[own]!;
      const aside = round(ring) * (kelvins[own]! - kelvins[after]!);
      loss[own]! += aside;
      loss[after]! -= aside;
      if (ring + 1 === rings) return;
      const outer = index(ring + 1, sector);
      const out = outwards(ring) * (kelvins[own]! - kelvins[outer]!);
      loss[own]! += out;
      loss[outer]! -= out;
    });
    return loss;
  };

  /** Lower band of (capacity / seconds + share x loss), row by row. */
  const matrix = (seconds: number, share: number): Float64Array => {
    const lower = new Float64Array(size * (band + 1));
    const add = (one: number, other: number, value: number) => {
      const [row, column] = one > other ? [one, other] : [other, one];
      lower[row * (band + 1) + band - (row - column)]! += value;
    };
    const couple = (one: number, other: number, value: number) => {
      add(one, one, value);
      add(other, other, value);
      add(one, other, -value);
    };
    eachCell((ring, sector) => {
      const own = index(ring, sector);
      add(own, own, area(ring) * (plate.capacity / seconds + share * plate.loss));
      couple(own, index(ring, (sector + 1) % sectors), share * round(ring));
      if (ring + 1 < rings) couple(own, index(ring + 1, sector), share * outwards(ring));
    });
    return lower;
  };

  const solver = bandSolver(matrix(stepSeconds, 0.5), size, band);
  const soft = bandSolver(matrix(stepSeconds / 4, 1), size, band);
  const mass = new Float64Array(size);
  eachCell((ring, sector) => {
    mass[index(ring, sector)] = plate.capacity * area(ring);
  });

  const flux = (coals: readonly VolumeCoal[]): Float64Array => {
    const watts = new Float64Array(size);
    for (const coal of coals) {
      const covered = new Float64Array(size);
      let whole = 0;
      eachCell((ring, sector) => {
        let under = 0;
        for (let one = 0; one < SAMPLES; one += 1)
          for (let other = 0; other < SAMPLES; other += 1) {
            const radius = (ring + (one + 0.5) / SAMPLES) * width;
            const angle = (sector + (other + 0.5) / SAMPLES - 0.5) * slice - coal.angle;
            const [along, across] = [radius * Math.cos(angle), radius * Math.sin(angle)];
            const half = coal.side / 2;
            if (Math.abs(along - coal.radius) <= half && Math.abs(across) <= half) under += radius;
          }
        covered[index(ring, sector)] = under;
        whole += under;
      });
      for (let cell = 0; cell < size; cell += 1)
        watts[cell]! += (coal.watts * covered[cell]!) / whole;
    }
    return watts;
  };

  const later = (kelvins: Float64Array, heat: Float64Array, steps: number): Float64Array => {
    let now = kelvins;
    for (let step = 0; step < steps; step += 1) {
      const right = lossOf(now);
      for (let cell = 0; cell < size; cell += 1)
        right[cell] = (mass[cell]! / stepSeconds) * now[cell]! - 0.5 * right[cell]! + heat[cell]!;
      solver(right);
      now = right;
    }
    return now;
  };

  /** One step in four quarters of backward Euler, against ringing after a change. */
  const softStart = (kelvins: Float64Array, heat: Float64Array): Float64Array => {
    let now = kelvins;
    for (let quarter = 0; quarter < 4; quarter += 1) {
      const right = new Float64Array(size);
      for (let cell = 0; cell < size; cell += 1)
        right[cell] = (4 * mass[cell]! * now[cell]!) / stepSeconds + heat[cell]!;
      soft(right);
      now = right;
    }
    return now;
  };

  const at = (kelvins: Float64Array, radius: number, sector: number): number => {
    const place = Math.min(rings - 1.001, Math.max(0, radius / width - 0.5));
    const low = Math.floor(place);
    const [inner, outer] = [kelvins[index(low, sector)]!, kelvins[index(low + 1, sector)]!];
    return inner + (place - low) * (outer - inner);
  };

  return { rings, sectors, flux, later, softStart, at };
}

/** Cholesky of a symmetric band matrix, once; the solver works in place. */
function bandSolver(lower: Float64Array, size: number, band: number) {
  const row = (at: number) => at * (band + 1) + band; // of the diagonal
  for (let at = 0; at < size; at += 1) {
    const first = Math.max(0, at - band);
    for (let column = first; column <= at; column += 1) {
      const from = Math.max(first, column - band);
      let sum = lower[row(at) - (at - column)]!;
      for (let inner = from; inner < column; inner += 1)
        sum -= lower[row(at) - (at - inner)]! * lower[row(column) - (column - inner)]!;
      lower[row(at) - (at - column)] = column === at ? Math.sqrt(sum) : sum / lower[row(column)]!;
    }
  }
  return (right: Float64Array): void => {
    for (let at = 0; at < size; at += 1) {
      let sum = right[at]!;
      for (let inner = Math.max(0, at - band); inner < at; inner += 1)
        sum -= lower[row(at) - (at - inner)]! * right[inner]!;
      right[at] = sum / lower[row(at)]!;
    }
    for (let at = size - 1; at >= 0; at -= 1) {
      const value = right[at]! / lower[row(at)]!;
      right[at] = value;
      for (let inner = Math.max(0, at - band); inner < at; inner += 1)
        right[inner]! -= lower[row(at) - (at - inner)]! * value;
    }
  };
}
