module moldturn

go 1.26.0

require (
	github.com/chromedp/cdproto v0.159.0
	github.com/chromedp/chromedp v0.23.0
	github.com/fschuetz04/simgo v0.7.0
	github.com/go-echarts/go-echarts/v2 v2.6.7
	github.com/google/go-cmp v0.7.0
	github.com/google/jsonschema-go v0.4.3
	github.com/jedib0t/go-pretty/v6 v6.8.3
	github.com/rogpeppe/go-internal v1.16.0
	github.com/spf13/pflag v1.1.0
	go.yaml.in/yaml/v4 v4.0.0
	golang.org/x/sync v0.25.0
	golang.org/x/term v0.48.0
	gonum.org/v1/gonum v0.17.0
	pgregory.net/rapid v1.3.0
)

require (
	github.com/go-json-experiment/json v0.0.0-20260213210345-44df1a37e875 // indirect
	github.com/mattn/go-runewidth v0.0.16 // indirect
	github.com/rivo/uniseg v0.4.7 // indirect
	golang.org/x/sys v0.50.0 // indirect
	golang.org/x/text v0.23.0 // indirect
	golang.org/x/tools v0.30.0 // indirect
)
