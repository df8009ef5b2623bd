package permit

// Amounts is how much of each use things take. Its zero value takes nothing.
type Amounts struct {
	Density  float64 // of gel coat, kg per L
	Transfer float64 // share of sprayed gel coat that ends up on the part, 0 … 1; 0: nothing is sprayed
	BandArea float64 // share of a part that an accent band covers
	Barrier  float64 // wet film of barrier coat, mm

	Laminate float64 // density, kg per L
	Glass    float64 // share of glass in laminate, by mass
	Waste    float64 // share of resin that does not end up in the part, below 1

	SmallGel, SmallResin []float64 // kg per labor hour, by kind of background work

	MoldFilm, RenewFilm float64 // wet tooling gel coat of a new and of a resurfaced mold, mm
	MoldThick           float64 // laminate of a new mold, mm
	MoldGlass           float64 // share of glass in it, by mass
	MoldsElsewhere      bool    // new molds are made by others

	PumpGel, PotGel         float64 // kg lost in a flush
	PumpSolvent, PotSolvent float64 // kg of a flush
	CleaningPerHour         float64 // kg of solvent per labor hour of laminating
}

// film is the kg of gel coat to put a film, mm, on an area, m²: 1 mm on 1 m² is
// 1 L.
func (a *Amounts) film(area, film float64) float64 {
	if a.Transfer <= 0 {
		return 0
	}
	return area * film * a.Density / a.Transfer
}

// resin is the kg of resin in a laminate of a thickness, mm, on an area, m².
func (a *Amounts) resin(area, thick, glass float64) float64 {
	return area * thick * a.Laminate * (1 - glass) / (1 - a.Waste)
}

// onePart is the kg that one whole part takes for a use.
func (a *Amounts) onePart(p *Part, u Use) float64 {
	switch u {
	case GelCoat:
		return a.film(p.Area, p.Film)
	case Band:
		return a.film(p.Area*a.BandArea, p.Film)
	case Barrier:
		return a.film(p.Area, a.Barrier)
	case Skin, Laminate:
		return a.resin(p.Area, p.Thick, a.Glass)
	}
	return 0
}

// Used is the kg of each use in a month.
func (a *Amounts) Used(p *Plant, m *MonthCounts) [Uses]float64 {
	var kg [Uses]float64
	for i := range m.Parts {
		part := &p.Parts[i]
		for u := NoUse + 1; u <= lastOfPart; u++ {
			if n := m.Parts[i][u]; n != 0 {
				kg[u] += float64(n) / Whole * a.onePart(part, u)
			}
		}
		kg[MoldGel] += float64(m.Resurfaced[i]) * a.film(part.Area, a.RenewFilm)
		if !a.MoldsElsewhere {
			kg[MoldGel] += float64(m.New[i]) * a.film(part.Area, a.MoldFilm)
			kg[MoldResin] += float64(m.New[i]) * a.resin(part.Area, a.MoldThick, a.MoldGlass)
		}
	}
	for k, n := range m.Small {
		kg[SmallGel] += hours(n) * at(a.SmallGel, k)
		kg[SmallResin] += hours(n) * at(a.SmallResin, k)
	}
	kg[FlushGel] = float64(m.Pump)*a.PumpGel + float64(m.Pot)*a.PotGel
	kg[FlushSolvent] = float64(m.Pump)*a.PumpSolvent + float64(m.Pot)*a.PotSolvent
	kg[Cleaning] = hours(m.Lay) * a.CleaningPerHour
	return kg
}

// hours turns person-milliseconds into labor hours.
func hours(ms int64) float64 { return float64(ms) / 3_600_000 }

func at(list []float64, k int) float64 {
	if k < len(list) {
		return list[k]
	}
	return 0
}
