package finish

// surfaceLoss is the wear that no strip brings back; the mold keeps the count.
func surfaceLoss(_ *Params, part *Part) float64 { return max(part.Surface, 0) }
