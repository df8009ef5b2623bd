package exposure

import "moldturn/sim/param"

const (
	yours   = "the plant's own fact"
	guessed = "assumption of this model, to be calibrated"
	memory  = "from memory, not verified"
)

// Inputs lists what a scenario may say about air in booths and shop. It is a
// fresh list at every call. Without the group "exposure" the defaults hold.
func Inputs() []param.Row {
	return []param.Row{
		{Path: "exposure", Kind: param.Group, Optional: true, Doc: "air of booths and shop, for screening; its defaults hold without it", Mark: param.User, Source: yours},
		{Path: "exposure.booth.face", Kind: param.Area, Low: 0.1, High: 1000, Default: "240 ft2", Doc: "open face of a booth", Mark: param.User, Source: yours},
		{Path: "exposure.booth.crossdraft", Kind: param.Number, Low: 0, High: 1000, Default: "50", Doc: "crossdraft at the face, ft/min", Mark: param.Assumption, Source: guessed},
		{Path: "exposure.booth.small", Kind: param.Flag, Default: "false", Doc: "a small booth, sprayed into from outside", Mark: param.User, Source: yours},
		{Path: "exposure.shop.air", Kind: param.Number, Low: 0, High: 1e8, Default: "0", Doc: "fresh air of the laminating shop, m³ per h; 0: not known", Mark: param.User, Source: yours},
		{Path: "exposure.mixing", Kind: param.Number, Low: 1, High: 20, Default: "5", Doc: "how much more air it takes than with perfect mixing, 3 to 10 in real rooms", Mark: param.Memory, Source: "ventilation manuals; " + memory},
		{Path: "exposure.peak", Kind: param.Number, Low: 1, High: 20, Default: "2", Doc: "evaporation at the gun over its mean while a booth is in use", Mark: param.CommonPractice, Source: "time in the booth is 1.6 to 2.2 times the time on the trigger, no source"},
		{Path: "exposure.lel", Kind: param.Share, Low: 0.001, High: 0.2, Default: "0.9 %", Doc: "lower explosive limit of styrene, by volume", Mark: param.Published, Source: "NIOSH Pocket Guide to Chemical Hazards, 2005-151; some data sheets have 1.1 %"},
		{Path: "exposure.solvent.lel", Kind: param.Share, Low: 0.001, High: 0.5, Default: "2.5 %", Doc: "lower explosive limit of the solvent, by volume", Mark: param.Memory, Source: "acetone; " + memory},
		{Path: "exposure.solvent.mole", Kind: param.Number, Low: 10, High: 500, Default: "58.08", Doc: "molar mass of the solvent, g/mol", Mark: param.Memory, Source: "acetone; " + memory},
	}
}
