package scenarios

import "moldturn/sim/exposure"

// ExposureDefaults is the change that has a scenario without the group
// "exposure" take its defaults.
func ExposureDefaults() (Change, Complaints) { return ParseChange("--set", "exposure={}") }

// Exposure is what is screened of the plant's air, without what its people
// evaporate; ok is false without the group "exposure".
func (p *Plant) Exposure() (s exposure.Screen, ok bool) {
	v := p.Value.At("exposure")
	if !v.Given() {
		return s, false
	}
	booth, solvent := v.At("booth"), v.At("solvent")
	money := func(path string) *Value { return orDefault(p.Value.At("money." + path)) }
	permit := func(path string) *Value { return orDefault(p.Value.At("permit." + path)) }
	return exposure.Screen{
		Booth: exposure.Booth{Face: booth.At("face").SquareMeters(), Air: money("booth.air").Number(), Crossdraft: booth.At("crossdraft").Number(),
			Small: booth.At("small").Flag(), Peak: v.At("peak").Number(), LEL: 100 * v.At("lel").Share()},
		Shop:           exposure.Shop{Air: v.At("shop.air").Number(), Mixing: v.At("mixing").Number()},
		SolventGravity: permit("solvent.density").Number(), SolventMole: solvent.At("mole").Number(), SolventLEL: 100 * solvent.At("lel").Share(),
		Flush: money("flush.pump_solvent").Liters(),
	}, true
}
