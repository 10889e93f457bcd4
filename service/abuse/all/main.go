// Command all attacks the program in every known way and prints what each attack
// cost: the most memory, what was refused and cut off, and how a light caller and the
// probes beside were answered. .ci/abuse runs it.
//
// The program, the attacker and the light caller are three processes on one machine,
// and share its cores: the times are those of a machine under attack from itself.
package main

import (
	"cmp"
	"context"
	"encoding/json"
	"flag"
	"fmt"
	"os"
	"os/exec"
	"regexp"
	"strconv"
	"syscall"
	"time"

	"example.com/knitmath/service/abuse"
)

// headStart is how long the light caller is there before the attack begins.
const headStart = time.Second / 2

// calm is when nobody attacks.
const calm = "nobody"

func main() {
	hold := flag.Duration("for", 8*time.Second, "how long each attack goes on")
	only := flag.String("only", "", "attacks whose name matches this `expression`")
	attack := flag.String("attack", "", "be the attacker with the attack of this name")
	size := flag.Int("size", 0, "how many the attacker is, if not as many as the attack says")
	bare := flag.String("bare", "", "be a bare server that gives the answers of these addresses")
	beside := flag.String("beside", "", "be the light caller of these addresses")
	flag.Parse()
	switch {
	case *attack != "":
		attacker(*attack, *beside, *hold, *size)
		return
	case *bare != "":
		fmt.Fprintln(os.Stderr, abuse.Bare(addressesOf(*bare)))
		os.Exit(1)
	case *beside != "":
		light(*beside, *hold)
		return
	}
	if err := all(*hold, *only); err != nil {
		fmt.Fprintln(os.Stderr, err)
		os.Exit(1)
	}
}

func addressesOf(text string) (at abuse.Addresses) {
	if err := json.Unmarshal([]byte(text), &at); err != nil {
		panic(err) // They come from this program.
	}
	return at
}

// light is the process of the light caller.
func light(addresses string, hold time.Duration) {
	at := addressesOf(addresses)
	ctx, cancel := context.WithTimeout(context.Background(), hold)
	defer cancel()
	_ = json.NewEncoder(os.Stdout).Encode(abuse.Light(ctx, at, func() {}))
}

// attacker is the process of the attacker.
func attacker(name, addresses string, hold time.Duration, size int) {
	at := addressesOf(addresses)
	<-time.After(headStart)
	ctx, cancel := context.WithTimeout(context.Background(), hold-headStart)
	defer cancel()
	for _, a := range abuse.Attacks {
		if a.Name == name {
			b := a.Run(ctx, at, cmp.Or(size, a.Long))
			var used syscall.Rusage
			if answered := b.Answered(); answered > 0 && syscall.Getrusage(syscall.RUSAGE_SELF, &used) == nil {
				b.Processor = time.Duration((used.Utime.Nano() + used.Stime.Nano()) / int64(answered))
			}
			_ = json.NewEncoder(os.Stdout).Encode(b)
		}
	}
}

// attackOf attacks from another process, of a lower priority: an attacker elsewhere
// would not take the processor away from the program and from the light caller.
func attackOf(ctx context.Context, at abuse.Addresses, name string, hold time.Duration, size int) (b abuse.Beside, err error) {
	if name == calm {
		<-ctx.Done()
		return b, nil
	}
	addresses, err := json.Marshal(at)
	if err != nil {
		return b, err
	}
	out, err := exec.Command("nice", "-n", "10", os.Args[0], "-attack", name, "-beside", string(addresses), "-for", hold.String(),
		"-size", strconv.Itoa(size)).Output()
	if err != nil {
		return b, err
	}
	return b, json.Unmarshal(out, &b)
}

func besideOf(at abuse.Addresses, hold time.Duration) (abuse.Beside, error) {
	var b abuse.Beside
	addresses, err := json.Marshal(at)
	if err != nil {
		return b, err
	}
	out, err := exec.Command(os.Args[0], "-beside", string(addresses), "-for", hold.String()).Output()
	if err != nil {
		return b, err
	}
	return b, json.Unmarshal(out, &b)
}

func all(hold time.Duration, only string) error {
	match, err := regexp.Compile(only)
	if err != nil {
		return err
	}
	dir, err := os.MkdirTemp("", "abuse")
	if err != nil {
		return err
	}
	defer os.RemoveAll(dir)
	path, err := abuse.Build(dir)
	if err != nil {
		return err
	}
	_, _ = fmt.Fprintf(os.Stdout, "%-45s %6s %8s %8s %6s %6s | %-44s | %-28s | %-34s | %s\n",
		"attack", "size", "MiB most", "refused", "unread", "cut", "light caller: asked refused failed p50 p99",
		"probes: asked failed longest", "attackers: answered p99 processor", "within the service: p99 at most, "+
			"processor and allocations an answer")
	var usual abuse.Spent
	for _, a := range append([]abuse.Attack{{Name: calm}}, abuse.Attacks...) {
		if a.Name != calm && !match.MatchString(a.Name) {
			continue
		}
		if err := one(path, a, hold, &usual); err != nil {
			return fmt.Errorf("%s: %w", a.Name, err)
		}
	}
	if !match.MatchString(besideBare) {
		return nil
	}
	return excess(path, hold)
}

// one attacks a program of its own, so that what it took at most is this attack's. What
// the light caller and the probes take of it while nobody attacks is usual, and left out
// of what an answer takes.
func one(path string, a abuse.Attack, hold time.Duration, usual *abuse.Spent) error {
	p, err := abuse.Start(path)
	if err != nil {
		return err
	}
	defer func() { _ = p.Stop() }()
	before, err := p.Spent()
	if err != nil {
		return err
	}
	ctx, cancel := context.WithTimeout(context.Background(), hold)
	defer cancel()
	var attacker abuse.Beside
	attacked := make(chan error, 1)
	go func() {
		var err error
		attacker, err = attackOf(ctx, p.Addresses, a.Name, hold, a.Long)
		attacked <- err
	}()
	var probes abuse.Beside
	probed := make(chan struct{})
	go func() {
		defer close(probed)
		probes = abuse.Probes(ctx, p.Addresses)
	}()
	// It ends before the attack does.
	light, err := besideOf(p.Addresses, hold-500*time.Millisecond)
	if err != nil {
		return err
	}
	<-probed
	if err := <-attacked; err != nil {
		return err
	}
	most, err := p.HighWaterMiB()
	if err != nil {
		return err
	}
	figures, err := p.Figures()
	if err != nil {
		return err
	}
	handled, err := p.Handled()
	if err != nil {
		return err
	}
	spent, err := p.Spent()
	if err != nil {
		return err
	}
	spent = spent.Less(before)
	if a.Name == calm {
		*usual = spent
	}
	each := spent.Less(*usual).Each()
	_, _ = fmt.Fprintf(os.Stdout, "%-45s %6d %8.0f %8.0f %6.0f %6.0f | %6d %6d %6d %9.2f ms %9.2f ms | %4d %4d %8.1f ms | "+
		"%7.0f /s %8.1f ms %6.1f us  | %8.2f ms %8.1f us %6.0f of %6.0f B\n",
		a.Name, a.Long, most,
		figures["knitmath_calls_refused_total"], figures["knitmath_refused_unread_total"], figures["knitmath_connections_cut_total"],
		light.Asked, light.Refused, light.Failed, ms(light.P50), ms(light.P99), probes.Asked, probes.Failed, ms(probes.Longest),
		float64(attacker.Answered())/(hold-headStart).Seconds(), ms(attacker.P99), us(attacker.Processor), ms(handled),
		us(each.Processor), each.Allocated, each.Bytes)
	return nil
}

func us(d time.Duration) float64 { return float64(d) / float64(time.Microsecond) }

func ms(d time.Duration) float64 { return float64(d) / float64(time.Millisecond) }
