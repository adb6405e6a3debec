/** The package has types but does not export them; these are the functions that the tests use. */
declare module 'cephes' {
  export const compiled: Promise<void>;
  export function ndtr(z: number): number;
  export function ndtri(probability: number): number;
  export function stdtr(degrees: number, t: number): number;
  export function incbet(a: number, b: number, x: number): number;
  export function lbeta(a: number, b: number): number;
}
