package yarn

import (
	"math/big"
	"strings"
	"testing"
)

// Counts as the trades write them, with the single and the plies they mean and the
// whole yarn in tex, worked by hand: 590.5412474 / Ne, 885.8118712 / Nw, 1000 / Nm.
func TestNotationsAreRead(t *testing.T) {
	for _, c := range []struct {
		text   string
		beside CountSystem
		system CountSystem
		plies  int
		tex    string // to four figures
		other  string // of another reading
	}{
		{"28/2 Nm", 0, CountSystemMetric, 2, "71.43", ""},
		{"Nm 28/2", 0, CountSystemMetric, 2, "71.43", ""},
		{"2/28 Nm", 0, CountSystemMetric, 2, "71.43", ""},
		{"Nm2/28", 0, CountSystemMetric, 2, "71.43", ""},
		{"2/28", CountSystemMetric, CountSystemMetric, 2, "71.43", ""},
		{"28 x 2 Nm", 0, CountSystemMetric, 2, "71.43", ""},
		{"2-ply 28 Nm", 0, CountSystemMetric, 2, "71.43", ""},
		{"NE 30/2", 0, CountSystemCotton, 2, "39.37", ""},
		{"30s cotton", 0, CountSystemCotton, 1, "19.68", ""},
		{"10/2 Ne", 0, CountSystemCotton, 2, "118.1", "2953"}, // or ten plies of 2
		{"8/4 Ne", 0, CountSystemCotton, 4, "295.3", "1181"},
		{"4/4 Ne", 0, CountSystemCotton, 4, "590.5", ""},
		{"2/24s worsted", 0, CountSystemWorsted, 2, "73.82", ""},
		{"2/24's Worsted", 0, CountSystemWorsted, 2, "73.82", ""},
		{"60/2 spun silk", 0, CountSystemSpunSilk, 2, "9.842", ""}, // of the finished yarn
		{"2/17 nm silk", 0, CountSystemMetric, 2, "117.6", ""},
		{"2/28 Nm merino", 0, CountSystemMetric, 2, "71.43", ""},
		{"34/2 Nm mercerised cotton", 0, CountSystemMetric, 2, "58.82", ""},
		{"10/2 perle cotton", 0, CountSystemCotton, 2, "118.1", ""}, // perle is of two plies
		{"5/2 pearl cotton", 0, CountSystemCotton, 2, "236.2", ""},
		{"NeK 24/2", 0, CountSystemWorsted, 2, "73.82", ""},
		{"NeB 30/2", 0, CountSystemCotton, 2, "39.37", ""},
		{"NeL 40/2", 0, CountSystemLinenLea, 2, "82.68", ""},
		{"78 dtex f24 x 2", 0, CountSystemDtex, 2, "15.6", ""},
		{"dtex 78 f 24", 0, CountSystemDtex, 1, "7.8", ""},
		{"78f24 dtex", 0, CountSystemDtex, 1, "7.8", ""},
		{"78f24 x 2 dtex", 0, CountSystemDtex, 2, "15.6", ""},
		{"1600 m/kg", 0, CountSystemMetresPer100G, 1, "625", ""},
		{"1.600 km/kg", 0, CountSystemMetresPer100G, 1, "625", ""},
		{"1.125 m/g", 0, CountSystemMetresPer100G, 1, "888.9", ""},
		{"R 74 tex/2", 0, CountSystemTex, 2, "74", ""},
		{"R74 tex x 2", 0, CountSystemTex, 2, "74", ""},
		{"37 tex x 2", 0, CountSystemTex, 2, "74", ""},
		{"37 tex × 2", 0, CountSystemTex, 2, "74", ""},
		{"37 tex/2", 0, CountSystemTex, 2, "74", "37"},
		{"150 denier", 0, CountSystemDenier, 1, "16.67", ""},
		{"150/48 den", 0, CountSystemDenier, 1, "16.67", ""},
		{"150 den x 2", 0, CountSystemDenier, 2, "33.33", ""},
		{"R 740 dtex/2", 0, CountSystemDtex, 2, "74", ""},
		{"5 run", 0, CountSystemWoollenRun, 1, "62.01", ""},
		{"12 US cut", 0, CountSystemWoollenCut, 1, "137.8", ""},
		{"12 Galashiels cut", 0, CountSystemGalashielsCut, 1, "206.7", ""},
		{"12 cut", CountSystemWoollenCut, 0, 0, "", ""}, // refused: see below
		{"40/2 lea", 0, CountSystemLinenLea, 2, "82.68", ""},
		{"8 lb/spyndle", 0, CountSystemJute, 1, "275.6", ""},
		{"400 m/100 g", 0, CountSystemMetresPer100G, 1, "250", ""},
		{"400m/100g", 0, CountSystemMetresPer100G, 1, "250", ""},
		{"115 m / 50 g", 0, CountSystemMetresPer50G, 1, "434.8", ""},
		{"100 g = 400 m", 0, CountSystemMetresPer100G, 1, "250", ""},
		{"437 yards per 100 grams", 0, CountSystemYardsPerPound, 1, "250.3", ""},
		{"1,600 yd/lb", 0, CountSystemYardsPerPound, 1, "310", ""},
		{"1600 ypp", 0, CountSystemYardsPerPound, 1, "310", ""},
		{"100 yd/oz", 0, CountSystemYardsPerOunce, 1, "310", ""},
		{"0,5 tex", 0, CountSystemTex, 1, "0.5", ""},
		{"0,125 tex", 0, CountSystemTex, 1, "0.125", ""},
		{"7,3 Nm", 0, CountSystemMetric, 1, "137", ""}, // 1000 / 7.3
		{"1 000 m/kg", 0, CountSystemMetresPer100G, 1, "1000", ""},
		{"1\u00a0600 m/kg", 0, CountSystemMetresPer100G, 1, "625", ""},
		{"34 tex Z600", 0, CountSystemTex, 1, "34", ""},
		{"34 tex Z600 x 2", 0, CountSystemTex, 2, "68", ""},
		{"34 tex Z 600 x 2 S 400", 0, CountSystemTex, 2, "68", ""},
		{"34 tex Z600 x 2 S400; R 69.3 tex", 0, CountSystemTex, 2, "69.3", ""},
		{"R 69.3 tex S400/2 Z600; 34 tex", 0, CountSystemTex, 2, "69.3", ""},
		{"R 69.3 tex/2 S400", 0, CountSystemTex, 2, "69.3", ""},
		{"20/22 denier", 0, CountSystemDenier, 1, "2.222", "2.333"}, // 21 / 9
		{"20/22 denier silk", 0, CountSystemDenier, 1, "2.333", ""},
		{"28/200 Nm", 0, CountSystemMetric, 28, "140", "7143"}, // or 200 plies of 28
		{"210 yards, 100 g", 0, CountSystemYardsPerPound, 1, "520.8", ""},
	} {
		w, wrong := readNotation(c.text, c.beside)
		if c.system == 0 {
			if wrong == "" {
				t.Errorf("%q is read", c.text)
			}
			continue
		}
		if wrong != "" {
			t.Errorf("%q: %s", c.text, wrong)
			continue
		}
		yarn := w.thickness(new(big.Rat))
		if w.system != c.system || w.plies != c.plies || significant(yarn.Tex.Float()) != c.tex {
			t.Errorf("%q is %d plies in system %d, %s tex; want %d, %d, %s",
				c.text, w.plies, w.system, significant(yarn.Tex.Float()), c.plies, c.system, c.tex)
		}
		other := ""
		if w.other != nil {
			other = significant(w.other.thickness(new(big.Rat)).Tex.Float())
		}
		if other != c.other {
			t.Errorf("%q may also be %q tex, want %q", c.text, other, c.other)
		}
	}
}

// What is not understood is never guessed at, and the words say what would do.
func TestNotationsThatAreRefused(t *testing.T) {
	for text, want := range map[string]string{
		"12 cut":                       "three things",
		"60/2 silk":                    "spun silk",
		"4 ply":                        "strands",
		"4-ply":                        "strands",
		"28/2":                         "no system",
		"Nm":                           "no number",
		"-5 Nm":                        "not understood",
		"34 tex x 2; R 90; tex":        "not understood",
		"34 tex x 2; 69.3 tex":         "two halves",
		"34 tex x 2; R 140 tex":        "do not fit",
		"28/2/3 Nm":                    "cabled",
		"28/1.5/2 Nm":                  "cabled",
		"28.5/1.5 Nm":                  "plies",
		"0 Nm":                         "0",
		"0/2 Nm":                       "0",
		"28/0 Nm":                      "0",
		"28 2 Nm":                      "not a number",
		"DK":                           "not understood",
		"28/2 Nm fluff":                "not understood",
		"8 perle cotton":               "a name and no count",
		"28 Nm worsted":                "not understood",
		"1.600 m/kg":                   "thousands",
		"1.600 yd/lb":                  "thousands",
		"f24 dtex":                     "not understood",
		"0 m/100 g":                    "0",
		"100 m/0 g":                    "0",
		"28 € Nm":                      "not understood",
		"2-ply 28/3 Nm":                "not a number",
		"1000000000 Nm":                "no yarn",
		"1.5-ply 5 Nm":                 "plies",
		"400m/100g 4-ply":              "leave the plies out",
		"4-ply, 100 g = 400 m":         "leave the plies out",
		"8 wpi":                        "no count",
		"9 wraps":                      "no count",
		strings.Repeat("9", 58) + "Nm": "no yarn",
	} {
		if _, wrong := readNotation(text, 0); !strings.Contains(wrong, want) {
			t.Errorf("%q: %q, want %q", text, wrong, want)
		}
	}
}

// What is written is read back as the same yarn, to the four figures written, in all
// systems and with all plies.
func TestNotationsAreReadBack(t *testing.T) {
	for _, s := range AllSystems() {
		for _, tex := range []float64{0.5, 7.4, 37, 62, 118, 250, 434.8, 999.9, 2300} {
			for _, plies := range []int{1, 2, 3, 4, 8, 12} {
				single := CountSystemTex.Tex(DecimalOf(tex))
				yarn := Thickness{Tex: single.Strands(plies), Single: single, Plies: plies}
				text := yarn.In(s)
				w, wrong := readNotation(text, 0)
				if wrong != "" {
					t.Errorf("%q: %s", text, wrong)
					continue
				}
				back := w.thickness(new(big.Rat))
				if ratio := back.Tex.Float() / yarn.Tex.Float(); ratio < 0.9994 || ratio > 1.0006 {
					t.Errorf("%q of %v tex x %d is read as %v tex", text, tex, plies, back.Tex.Float())
				}
				if countSystems[s].style != plyNone && back.Plies != plies {
					t.Errorf("%q is read as %d plies, not %d", text, back.Plies, plies)
				}
			}
		}
	}
}

// FuzzNotation wants every text to be read as a yarn or to be refused with words, and
// what is read to be written and read again.
func FuzzNotation(f *testing.F) {
	for _, text := range []string{"28/2 Nm", "R 74 tex/2", "400 m/100 g", "2-ply 28 Nm", "12 cut", "1,600 yd/lb", "4 ply", "60/2 spun silk"} {
		f.Add(text, int32(0))
	}
	f.Fuzz(func(t *testing.T, text string, beside int32) {
		system := CountSystem(beside)
		if beside < 0 || system > lastSystem {
			return
		}
		out, err := ConvertYarnCount(ConvertInput{Count: &Count{Notation: text, System: system}, Systems: AllSystems()})
		if err != nil {
			if !strings.Contains(err.Error(), ": ") {
				t.Fatalf("%q: %v", text, err)
			}
			return
		}
		for _, c := range out.Counts {
			if !(c.Number > 0) || !(c.SingleNumber > 0) || c.Notation == "" {
				t.Fatalf("%q: %+v", text, c)
			}
			if _, wrong := readNotation(c.Notation, 0); wrong != "" && c.Number >= 1e-3 && c.Number <= MaxNumber {
				t.Fatalf("%q is written %q: %s", text, c.Notation, wrong)
			}
		}
	})
}

// The twist of the whole yarn is read, of the plies where it is plied, and written behind the
// count in tex; a twist of the singles alone is none of the yarn.
func TestTwistsOfNotations(t *testing.T) {
	for text, want := range map[string]string{
		"34 tex Z600": "34 tex Z600", "34 tex Z600 x 2": "R 68 tex/2", "34 tex Z600 x 2 S400": "R 68 tex/2 S400",
		"34 tex Z600 x 2 S400; R 69.3 tex": "R 69.3 tex/2 S400", "R 69.3 tex/2 S400": "R 69.3 tex/2 S400",
		"R 69.3 tex S400/2 Z600": "R 69.3 tex/2 S400", "2/24s 2 worsted": "", "R 69.3 tex S400/2 Z600; 34 tex": "R 69.3 tex/2 S400",
	} {
		w, wrong := readNotation(text, 0)
		if want == "" {
			if wrong == "" {
				t.Errorf("%q is read", text)
			}
			continue
		}
		if got := w.thickness(new(big.Rat)).In(CountSystemTex); wrong != "" || got != want {
			t.Errorf("%q: %q %s, want %q", text, got, wrong, want)
		}
	}
	out := described(t, DescribeInput{Count: &Count{Notation: "34 tex Z600 x 2 S400; R 69.3 tex"}})
	if out.Twist == nil || out.Twist.Direction != TwistDirectionS || out.Twist.PerCm != 4 {
		t.Errorf("described with %+v", out.Twist)
	}
	w, _ := readNotation("34 tex Z600 x 2 S400; R 69.3 tex", 0)
	if single := w.thickness(new(big.Rat)); single.Tex.Float() != 69.3 || single.Single.Float() != 34 || !single.Contracted {
		t.Errorf("%+v", single)
	}
}
