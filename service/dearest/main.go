package main

import (
	"encoding/json"
	"flag"
	"fmt"
	"os"
	"path/filepath"
	"slices"
	"strings"

	"google.golang.org/protobuf/encoding/protojson"
	"google.golang.org/protobuf/proto"
)

func main() {
	climbs := flag.Int("climb", 0, "climb from the known questions by so many changed ones, for each method and aim")
	seed := flag.Uint64("seed", 1, "of the climb")
	only := flag.String("method", "", "this method only, for example PlanWedge")
	known := flag.String("known", "service/dearest/testdata", "the folder of the questions that are known")
	keep := flag.Bool("keep", false, "write what a climb found over what was known, where it takes more")
	timed := flag.Bool("time", false, "time the known questions instead, and write a table")
	flag.Parse()
	list := slices.DeleteFunc(methods(), func(m method) bool { return *only != "" && m.name != *only })
	if *timed {
		if err := table(os.Stdout, list, *known); err != nil {
			fail(err)
		}
		return
	}
	for _, m := range list {
		questions, err := readKnown(m, *known)
		if err != nil {
			fail(err)
		}
		best, err := dearest(m, questions, *climbs, *seed)
		if err != nil {
			fail(err)
		}
		if *keep {
			if err := writeKnown(m, *known, best); err != nil {
				fail(err)
			}
		}
	}
}

func fail(err error) {
	fmt.Fprintln(os.Stderr, err)
	os.Exit(1)
}

// knownQuestion is a question in the file of its method, and the aim of the climb
// that found it.
type knownQuestion struct {
	Aim      string          `json:"aim"`
	Question json.RawMessage `json:"question"`
}

func knownFile(m method, folder string) string { return filepath.Join(folder, m.name+".json") }

// readKnown reads the known questions of a method.
func readKnown(m method, folder string) (map[string]proto.Message, error) {
	data, err := os.ReadFile(knownFile(m, folder))
	if err != nil {
		return nil, err
	}
	var list []knownQuestion
	if err := json.Unmarshal(data, &list); err != nil {
		return nil, fmt.Errorf("%s: %w", m.name, err)
	}
	questions := map[string]proto.Message{}
	for _, k := range list {
		q := m.input.New().Interface()
		if err := protojson.Unmarshal(k.Question, q); err != nil {
			return nil, fmt.Errorf("%s: %w", m.name, err)
		}
		questions[k.Aim] = q
	}
	return questions, nil
}

// writeKnown writes the questions of a method, one to a line.
func writeKnown(m method, folder string, questions map[string]proto.Message) error {
	var lines []string
	for _, by := range aims {
		text, err := protojson.MarshalOptions{UseProtoNames: true}.Marshal(questions[by.name])
		if err != nil {
			return err
		}
		line, err := json.Marshal(knownQuestion{by.name, text}) // compacts, since spaces differ from build to build
		if err != nil {
			return err
		}
		lines = append(lines, string(line))
	}
	return os.WriteFile(knownFile(m, folder), []byte("[\n"+strings.Join(lines, ",\n")+"\n]\n"), 0o644)
}
