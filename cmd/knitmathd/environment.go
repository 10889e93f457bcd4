package main

import (
	"fmt"
	"slices"
	"strings"
)

// variablePrefix begins the name of every variable that is read.
const variablePrefix = "KNITMATHD_"

// variableOf is the variable of a flag.
func variableOf(flagName string) string {
	return variablePrefix + strings.ToUpper(strings.ReplaceAll(flagName, "-", "_"))
}

// environment reads lines as os.Environ gives them. Of a name given twice the
// first counts, as it does for os.Getenv.
func environment(lines []string) map[string]string {
	read := map[string]string{}
	for _, line := range lines {
		name, value, _ := strings.Cut(line, "=")
		if _, given := read[name]; !given {
			read[name] = value
		}
	}
	return read
}

// unknownVariables says which variables with our prefix mean nothing. Whoever
// writes KNITMATHD_DRIAN wants a drain, and must not learn in a roll-out that there
// is none.
func unknownVariables(env map[string]string, known []string) []error {
	var names []string
	for name := range env {
		if strings.HasPrefix(name, variablePrefix) && !slices.Contains(known, name) && !injected(name) {
			names = append(names, name)
		}
	}
	slices.Sort(names)
	var faults []error
	for _, name := range names {
		faults = append(faults, fmt.Errorf("%s is no variable of the program; the nearest is %s", name, nearest(name, known)))
	}
	return faults
}

// injected knows the variables that clusters set in every container for a Service
// called knitmathd, or knitmathd-something.
func injected(name string) bool {
	return strings.Contains(name, "_SERVICE_") || strings.Contains(name, "_PORT")
}

// nearest is the name that the fewest changes of letters make of name.
func nearest(name string, known []string) string {
	return slices.MinFunc(known, func(a, b string) int { return changes(name, a) - changes(name, b) })
}

// changes counts the letters to put in, take out or replace that make b of a: the
// distance of Levenshtein (1966), a row of its table at a time.
func changes(a, b string) int {
	row := make([]int, len(b)+1)
	for j := range row {
		row[j] = j
	}
	for i := range len(a) {
		diagonal := row[0]
		row[0] = i + 1
		for j := range len(b) {
			replaced := diagonal
			if a[i] != b[j] {
				replaced++
			}
			diagonal = row[j+1]
			row[j+1] = min(replaced, row[j]+1, row[j+1]+1)
		}
	}
	return row[len(b)]
}
