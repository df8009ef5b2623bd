// Package exposure screens the air of booths and shops: velocities and volumes
// of spray booths, dilution of solvent vapor below its explosive limit, and the
// air that would dilute styrene to published limits.
//
// Screening only. Nothing here replaces a measurement: what people breathe is
// decided at the gun and in the mold, where the air is never mixed as these
// formulas assume. Measurements, respirators and local codes are the business
// of industrial hygienists and of the authority that has jurisdiction.
//
// Everything is a pure function of numbers. Units are in the names: Cfm is
// ft³/min, Fpm ft/min, M3h m³/h.
package exposure
