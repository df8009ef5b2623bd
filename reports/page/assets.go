package page

import (
	"crypto/sha256"
	"embed"
	"encoding/base64"
	"strings"
)

// echartsVersion is the version of assets/echarts.min.js, the unchanged
// dist/echarts.min.js of the npm package echarts. Its licenses stand beside it
// and its notice is inside the script.
const echartsVersion = "6.1.0"

// echartsSHA256 is the SHA-256 of that file as served by the registry.
const echartsSHA256 = "b66b25aeb4df84e33199dc21694014d336d222cbd9deb0e5a7c14bd6aa0d0fd0"

//go:embed assets
var assets embed.FS

// bootFiles are joined, in this order, into one script.
var bootFiles = []string{"theme.js", "tip.js", "labels.js", "shapes.js", "floor.js", "kinds.js", "start.js", "diary.js"}

// asset returns an embedded file. The names are constants of this package, so
// a missing one is a fault of the build.
func asset(name string) string {
	b, err := assets.ReadFile("assets/" + name)
	if err != nil {
		panic(err)
	}
	return string(b)
}

// boot is the script that draws the charts of a page and steps its diaries.
func boot() string {
	var b strings.Builder
	b.WriteString("(function () {\n'use strict';\n")
	for _, name := range bootFiles {
		b.WriteString(asset(name))
	}
	b.WriteString("}());\n")
	return b.String()
}

// policy is the content security policy of a page with these inline scripts:
// only they run, styles and data images are inline, nothing is loaded.
// See W3C, Content Security Policy Level 3, sections 2.3.1 and 3.3.
func policy(scripts []string) string {
	p := "default-src 'none'; style-src 'unsafe-inline'; img-src data:; base-uri 'none'; form-action 'none'"
	if len(scripts) == 0 {
		return p
	}
	p += "; script-src"
	for _, s := range scripts {
		sum := sha256.Sum256([]byte(s))
		p += " 'sha256-" + base64.StdEncoding.EncodeToString(sum[:]) + "'"
	}
	return p
}
