// Types of the reference libraries that come without any; only what the tests use.

declare module '@lhncbc/ucum-lhc' {
  interface Conversion {
    readonly status: 'succeeded' | 'failed' | 'error';
    readonly toVal: number | null;
  }
  export const UcumLhcUtils: {
    getInstance(): { convertUnitTo(from: string, amount: number, to: string): Conversion };
  };
}

declare module 'psychrolib' {
  const psychrolib: {
    readonly SI: number;
    SetUnitSystem(system: number): void;
    /** Pressure [Pa] at a height [m]. */
    GetStandardAtmPressure(height: number): number;
    /** Density [kg/m³] from °C, humidity ratio, Pa. */
    GetMoistAirDensity(celsius: number, humidityRatio: number, pressure: number): number;
  };
  export default psychrolib;
}
