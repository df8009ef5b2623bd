package climate

import (
	"fmt"

	"moldturn/sim/param"
)

// areaInputs are the rows of areas; an area without a word about it is heated
// day and night and not cooled.
func areaInputs() []param.Row {
	const at = "climate.areas.*."
	return []param.Row{
		{Path: "climate.areas", Kind: param.Map, Low: 1, High: 20, Default: "{plant: {}}", Mark: param.User, Source: yours,
			Doc: "parts of the plant with air of their own, by name"},
		{Path: at + "gain", Kind: param.Difference, Low: -10, High: 30, Default: fmt.Sprintf("%g C", DefaultGainK), Mark: param.Assumption, Source: guessed,
			Doc: "how much warmer than outdoors the air is without heating or cooling: people, machines, sun on the roof"},
		{Path: at + "heat", Kind: param.Temperature, Low: -30, High: 60, Default: "21 C", Mark: param.User, Source: yours,
			Doc: "heated up to this; -30 C for an area without heating"},
		{Path: at + "cool", Kind: param.Temperature, Low: 5, High: 60, Optional: true, Mark: param.User, Source: yours,
			Doc: "cooled down to this; left out for an area without cooling. Cooling alone leaves the moisture in the air, which then lies near its dew point: give most_humidity too for a cooler that dries"},
		{Path: at + "night.heat", Kind: param.Temperature, Low: -30, High: 60, Optional: true, Mark: param.User, Source: yours,
			Doc: "heated up to this at night; left out: as by day"},
		{Path: at + "night.cool", Kind: param.Temperature, Low: 5, High: 60, Optional: true, Mark: param.User, Source: yours,
			Doc: "cooled down to this at night; left out: as by day"},
		{Path: at + "night.from", Kind: param.ClockTime, Default: "20:00", Mark: param.User, Source: yours,
			Doc: "begin of the night set-back"},
		{Path: at + "night.to", Kind: param.ClockTime, Default: "04:00", Mark: param.User, Source: yours,
			Doc: "end of the night set-back; the same as its begin: none"},
		{Path: at + "night.weekend", Kind: param.Flag, Default: "false", Mark: param.User, Source: yours,
			Doc: "whether Saturday and Sunday count as night"},
		{Path: at + "most_humidity", Kind: param.Share, Low: 0.1, High: 1, Default: "100 %", Mark: param.User, Source: yours,
			Doc: "air is dehumidified to this relative humidity; 100 %: never"},
		{Path: at + "mold_lag", Kind: param.Duration, Low: 0, High: 24, Default: fmt.Sprintf("%g h", DefaultLagHours), Mark: param.Assumption, Source: guessed + "; 0.5 to 3 h",
			Doc: "time constant with which molds follow the air"},
	}
}
