// Jets and cutting.
import { describe } from 'vitest';
import { BIT_FRICTION, bitTorque_Nm } from '../../sim/drilling/torque';
import { createBitResult, drillInto, tealeRate_ms } from '../../sim/drilling/bit';
import { DRIVE_HOT_C, driveAfter_C, driveHeat_W } from '../../sim/drilling/drive';
import { grip_N } from '../../sim/drilling/pull';
import { jetErosion_ms, jetWallShear_Pa } from '../../sim/drilling/jet';
import { nozzlePressure_Pa, nozzleVelocity_ms } from '../../sim/hydraulics/nozzle';
import { DEFAULT_KIT } from '../../sim/materials/kit';
import { row } from './row';

const L_PER_MIN = 60000;

describe('jets', () => {
  const JETS = [
    { id: 'JET-1', q: 150, nozzles: 1, nozzle_mm: 12, v: 22.1, kPa: 273.4 },
    { id: 'JET-2', q: 150, nozzles: 2, nozzle_mm: 8, v: 24.87, kPa: 346.0 },
    { id: 'JET-3', q: 200, nozzles: 3, nozzle_mm: 8, v: 22.1, kPa: 273.4 },
    { id: 'JET-4', q: 250, nozzles: 4, nozzle_mm: 10, v: 13.26, kPa: 98.4 },
  ];
  for (const j of JETS) {
    row({
      id: j.id,
      mark: 'D',
      about: `${j.q} L/min through ${j.nozzles} x ${j.nozzle_mm} mm, 1010 kg/m3: velocity, m/s, and pressure, kPa`,
      source: 'v = Q/A, rho v^2/(2 Cd^2) with Cd .95 (form read in public texts), derived',
      expected: [j.v, j.kPa],
      tolerance: { rel: 0.001 },
      compute: () => {
        const v = nozzleVelocity_ms(j.q / L_PER_MIN, j.nozzles, j.nozzle_mm / 1000);
        return [v, nozzlePressure_Pa(1010, v, 0.95) / 1000];
      },
    });
  }
  row({
    id: 'JET-wall',
    mark: 'D',
    about: 'stress on a wall of a jet of 10 m/s from 8 mm at .05 (in its core), .1, .2 m',
    source: 'Hanson & Cook 1997, coefficients from memory',
    expected: [416, 105.7, 26.4],
    tolerance: { rel: 0.002 },
    compute: () => [0.05, 0.1, 0.2].map((j) => jetWallShear_Pa(1000, 10, 0.008, j)),
  });
  row({
    id: 'JET-kd',
    mark: 'D',
    about: 'erosion of clay of tau_c .1, 1, 5, 10 Pa at 1 Pa above it, in cm3/(N s)',
    source: 'Hanson & Simon 2001, kd = .2 tau_c^-.5, from memory',
    expected: [0.632, 0.2, 0.089, 0.063],
    tolerance: { abs: 5e-4 },
    compute: () => [0.1, 1, 5, 10].map((tauC_Pa) => jetErosion_ms(tauC_Pa + 1, tauC_Pa) * 1e6),
  });
});

describe('cutting', () => {
  const AREA_m2 = (Math.PI / 4) * 0.1 * 0.1;
  const TEALE = 'Teale 1965, R = 2 pi N T/(A E), derived';
  const DRIVES = [
    { id: 'TEALE-1', torque_Nm: 40, rpm: 30, mh: [115, 57.6, 19.2, 5.76] },
    { id: 'TEALE-2', torque_Nm: 60, rpm: 30, mh: [173, 86, 28.8, 8.64] },
    { id: 'TEALE-3', torque_Nm: 80, rpm: 40, mh: [307, 154, 51, 15.4] },
  ];
  for (const d of DRIVES) {
    row({
      id: d.id,
      mark: 'D',
      about: `${d.torque_Nm} N m at ${d.rpm} rpm on a 100 mm bit: m/h in ground of .5, 1, 3, 10 MPa`,
      source: TEALE,
      expected: d.mh,
      tolerance: { rel: 0.006 },
      compute: () => [0.5, 1, 3, 10].map((E) => tealeRate_ms(d.rpm / 60, d.torque_Nm, E * 1e6, AREA_m2, 0) * 3600),
    });
  }
  row({
    id: 'TEALE-4',
    mark: 'D',
    about: 'the work of a second at 200 N, 90 rpm in ground of 1 MPa adds up to its specific energy',
    source: 'Teale 1965, MSE = W/A + 2 pi N T/(A R)',
    expected: 1e6,
    tolerance: { rel: 1e-9 },
    compute: () => {
      const torque_Nm = bitTorque_Nm(200, 0.1);
      const rate_ms = tealeRate_ms(1.5, torque_Nm, 1e6, AREA_m2, 200);
      return 200 / AREA_m2 + (2 * Math.PI * 1.5 * torque_Nm) / (AREA_m2 * rate_ms);
    },
  });
  row({
    id: 'BIT-T',
    mark: 'D',
    about: 'torque of a rubbing bit of 100 mm under 250 N, mu .4',
    source: 'mu W D/3',
    expected: [BIT_FRICTION, 10 / 3],
    tolerance: { rel: 1e-12 },
    compute: () => [0.4, bitTorque_Nm(250, 0.1)],
  });

  /** Rate with the stem's weight let down in full, clean hole, default kit, m/h. */
  function rate_mh(E_MPa: number, su_kPa: number | null, tauC_Pa: number): number {
    const out = createBitResult();
    drillInto(out, {
      kit: DEFAULT_KIT,
      feed_frac: 1,
      stemLength_m: 12,
      turning: true,
      E_MPa,
      su_kPa,
      tauC_Pa,
      grip_Nm: 0,
      balling_frac: 0,
      bed_m: 0,
      load_frac: 0,
      flow_m3s: 0.002,
      density_kgm3: 1000,
      nozzleVelocity_ms: 12.7,
    });
    return out.rate_ms * 3600;
  }
  const PRACTICE = 'handbook practice from memory, calibration bands; rates while advancing';
  const BANDS = [
    { id: 'ROP-sand', about: 'sand (E .5 MPa)', E: 0.5, su: null, tau: 0.2, from: 10, to: 60 },
    { id: 'ROP-silt', about: 'silt (E 1.2 MPa)', E: 1.2, su: null, tau: 0.12, from: 5, to: 20 },
    { id: 'ROP-soft', about: 'soft clay (E 2.8 MPa)', E: 2.8, su: 15, tau: 1, from: 2, to: 8 },
    { id: 'ROP-stiff', about: 'stiff clay (E 10 MPa)', E: 10, su: 140, tau: 20, from: 0.5, to: 2 },
    { id: 'ROP-gravel', about: 'coarse gravel (E 40 MPa)', E: 40, su: null, tau: 14, from: 0, to: 1 },
  ];
  for (const b of BANDS) {
    row({
      id: b.id,
      mark: 'M',
      about: `12 m stem let down in full: m/h in ${b.about}`,
      source: PRACTICE,
      expected: { from: b.from, to: b.to },
      compute: () => rate_mh(b.E, b.su, b.tau),
    });
  }
});

describe('what holds the stem and warms the drive', () => {
  row({
    id: 'GRIP-1',
    mark: 'M',
    about: 'adhesion of clay to steel, as a share of its undrained strength',
    source: 'pile design by total stress, from memory: .3 in stiff to 1 in soft clay',
    expected: { from: 0.3, to: 1 },
    compute: () => grip_N(0.1, 1, 40) / (Math.PI * 0.1 * 40000),
  });
  row({
    id: 'DRIVE-1',
    mark: 'M',
    about: 'temperature at which the windings of a hand-held motor must be switched off, C',
    source: 'IEC 60085, class B, from memory',
    expected: 130,
    tolerance: 'exact',
    compute: () => DRIVE_HOT_C,
  });
  row({
    id: 'DRIVE-2',
    mark: 'D',
    about:
      'a cold motor that stalls at 700 W: rise after a minute with all heat kept in 900 J/K, K (a little less with cooling)',
    source: '700 x 60 / 900 = 46.7',
    expected: { from: 42, to: 46.7 },
    compute: () => driveAfter_C(25, 25, driveHeat_W(700, 1), false, 60) - 25,
  });
});
