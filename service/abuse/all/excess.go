package main

import (
	"context"
	"encoding/json"
	"fmt"
	"os"
	"os/exec"
	"slices"
	"time"

	"example.com/knitmath/service/abuse"
)

// besideBare is what excess is called.
const besideBare = "excess beside bare servers"

const (
	// few callers have all that can be had of the machine, and many are ten times as many.
	few, many = 64, 640
	// turns is how often each is asked by both, in turn, so that all see the same machine.
	turns = 3
	// mostBeyond is by how many points the program may lose more than a bare server: ten times the callers have
	// ten times the connections, whose memory is cold when a call comes, whoever serves them. A decision of ours.
	mostBeyond = 10
)

// side is what one server gives few callers, or many.
type side struct{ perSecond, processor, p99 []float64 }

func middle(list []float64) float64 {
	slices.Sort(list)
	return list[len(list)/2]
}

// excess asks the program and bare servers by few callers and by ten times as many, and says what each loses.
func excess(path string, hold time.Duration) error {
	ours, err := abuse.Start(path)
	if err != nil {
		return err
	}
	defer func() { _ = ours.Stop() }()
	addresses, err := json.Marshal(ours.Addresses)
	if err != nil {
		return err
	}
	bare, err := abuse.StartBare(exec.Command(os.Args[0], "-bare", string(addresses))) //nolint:gosec // This very program.
	if err != nil {
		return err
	}
	defer func() { _ = bare.Stop() }()
	for _, face := range []string{"gRPC", "JSON"} {
		var sides [2][2]side // of ours and of bare, with few callers and with many
		for range turns {
			for who, p := range []*abuse.Program{ours, bare} {
				for i, callers := range []int{few, many} {
					if err := sides[who][i].turn(p, face, callers, hold/4+headStart); err != nil {
						return err
					}
				}
			}
		}
		own, other := lost("program", face, sides[0]), lost("bare server", face, sides[1])
		verdict := "within"
		if own > other+mostBeyond {
			verdict = "BEYOND"
		}
		_, _ = fmt.Fprintf(os.Stdout, "%s, %s: %.0f points more are lost than by a bare server, %s the %d that may be; "+
			"by itself %.0f %%, 10 being wanted\n", besideBare, face, own-other, verdict, mostBeyond, own)
	}
	return nil
}

// turn is one turn of so many callers, with a light caller beside.
func (s *side) turn(p *abuse.Program, face string, callers int, hold time.Duration) error {
	before, err := p.Processor()
	if err != nil {
		return err
	}
	beside := make(chan abuse.Beside, 1)
	go func() {
		b, _ := besideOf(p.Addresses, hold) // It shows as 0 if it fails.
		beside <- b
	}()
	b, err := attackOf(context.Background(), p.Addresses, "light callers, "+face, hold, callers)
	if err != nil {
		return err
	}
	light := <-beside
	after, err := p.Processor()
	if err != nil {
		return err
	}
	answered := float64(b.Answered())
	s.perSecond = append(s.perSecond, answered/(hold-headStart).Seconds())
	s.processor = append(s.processor, us(after-before)/max(1, answered+float64(light.Answered())))
	s.p99 = append(s.p99, ms(light.P99))
	return nil
}

// lost is how many in a hundred answers a second many callers lose of what few get.
func lost(who, face string, of [2]side) float64 {
	loss := 100 * (1 - middle(of[1].perSecond)/middle(of[0].perSecond))
	_, _ = fmt.Fprintf(os.Stdout, "%s, %s, %-11s: %d callers %7.0f /s, %5.1f us an answer; %d callers %7.0f /s, %5.1f us (%.2f times); "+
		"a light caller's p99 %.1f and %.1f ms; lost %.0f %%\n", besideBare, face, who,
		few, middle(of[0].perSecond), middle(of[0].processor), many, middle(of[1].perSecond), middle(of[1].processor),
		middle(of[1].processor)/middle(of[0].processor), middle(of[0].p99), middle(of[1].p99), loss)
	return loss
}
