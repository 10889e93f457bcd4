package conns

import (
	"net"
	"testing"
	"time"

	dto "github.com/prometheus/client_model/go"
)

// pipes is a listener of connections that are made up.
type pipes chan net.Conn

func (p pipes) Accept() (net.Conn, error) {
	c, ok := <-p
	if !ok {
		return nil, net.ErrClosed
	}
	return c, nil
}

func (p pipes) Close() error   { close(p); return nil }
func (p pipes) Addr() net.Addr { return &net.TCPAddr{} }

var testLimits = Limits{Answers: 1000, PerConn: 600, Share: 100, Questions: 1000, QuestionShare: 100,
	Patience: 30 * time.Second, Hurry: 2 * time.Second}

// house is a face with room for three connections and sixteen calls.
func house(t *testing.T) (*Face, func() *Conn) {
	t.Helper()
	listener := make(pipes, 10)
	f := NewKeeper(testLimits).Face("test", listener, 3, 16)
	return f, func() *Conn {
		t.Helper()
		_, ours := net.Pipe()
		listener <- ours
		c, err := f.Accept()
		if err != nil {
			t.Fatal(err)
		}
		return c.(*Conn)
	}
}

func (f *Face) cuts(t *testing.T, why cause) float64 {
	t.Helper()
	var got dto.Metric
	if err := f.keeper.cut.WithLabelValues(f.name, string(why)).Write(&got); err != nil {
		t.Fatal(err)
	}
	return got.GetCounter().GetValue()
}

// checkHeld wants so much to be held by all connections together.
func (f *Face) checkHeld(t *testing.T, conns, open int, answers, questions int64) {
	t.Helper()
	k := f.keeper
	if f.Count() != conns || f.Open() != open || k.answers.Load() != answers || k.questions.Load() != questions {
		t.Errorf("%d connections, %d calls, %d bytes of answers, %d of questions; want %d, %d, %d, %d",
			f.Count(), f.Open(), k.answers.Load(), k.questions.Load(), conns, open, answers, questions)
	}
}

// What a connection holds is counted, and nothing is left of it when it closes.
func TestNothingIsLeft(t *testing.T) {
	f, accept := house(t)
	a, b := accept(), accept()
	a.begin(1)
	a.begin(3)
	a.begin(3) // Once more: the trailers of a question.
	a.got(1, 40)
	a.got(3, 2)
	b.begin(1)
	b.got(7, 1000) // There is no such call.
	a.Hold(50)
	f.checkHeld(t, 2, 3, 50, 42)
	a.finish(1)
	a.Let(20)
	f.checkHeld(t, 2, 2, 30, 2)
	a.giveUp(3)
	f.checkHeld(t, 2, 2, 30, 2) // It keeps its place until the next sweep.
	f.keeper.Sweep(time.Now())
	f.checkHeld(t, 2, 1, 30, 0)
	_ = a.Close()
	_ = a.Close()
	a.Hold(5)
	a.Let(30) // The library lets go after the end.
	a.begin(9)
	f.checkHeld(t, 1, 1, 0, 0)
	_ = b.Close()
	f.checkHeld(t, 0, 0, 0, 0)
}

// A full house has room for who comes new as long as somebody is idle.
func TestIdleMakesRoom(t *testing.T) {
	f, accept := house(t)
	busy, idle, idler := accept(), accept(), accept()
	busy.begin(1)
	idle.begin(1)
	idle.finish(1)
	idler.begin(1)
	idler.finish(1)
	busy.idle, idle.idle, idler.idle = time.Now().Add(-time.Hour), time.Now().Add(-time.Minute), time.Now().Add(-2*time.Minute)
	newer := accept()
	f.checkHeld(t, 3, 1, 0, 0)
	if !idler.closed || idle.closed || busy.closed || f.cuts(t, causeIdle) != 1 {
		t.Errorf("closed: idler %v, idle %v, busy %v", idler.closed, idle.closed, busy.closed)
	}
	last := accept()
	if !idle.closed {
		t.Error("the other idle one is there")
	}
	// One that never asked anything goes before one that has, and sooner.
	last.begin(1)
	last.finish(1)
	last.idle = time.Now().Add(-time.Minute)
	newer.idle = time.Now().Add(-time.Second / 2)
	third := accept()
	if last.closed || !newer.closed {
		t.Errorf("closed: the one that has asked %v, the one that has not %v", last.closed, newer.closed)
	}
	last.begin(3)
	// And so does one that has been asking for too long.
	busy.calls[0].begun = time.Now().Add(-testLimits.Hurry - time.Second)
	accept().begin(1)
	if !busy.closed || f.cuts(t, causeQuestion) != 1 {
		t.Error("the one that asks for ever was kept")
	}
	// Now all of them are busy.
	third.begin(1)
	theirs, ours := net.Pipe()
	f.Listener.(pipes) <- ours
	_ = f.Listener.Close()
	if _, err := f.Accept(); err == nil {
		t.Error("a fourth connection")
	}
	if _, err := theirs.Write([]byte{1}); err == nil {
		t.Error("the fourth connection was not closed")
	}
}

// Who comes when all the others have just come, and say nothing, waits until one of
// them has been silent for long enough, and takes its place.
func TestComersWaitForTheSilent(t *testing.T) {
	f, accept := house(t)
	asking, silent, other := accept(), accept(), accept()
	asking.begin(1)
	late := accept()
	if silent.closed == other.closed || asking.closed || late.closed || f.cuts(t, causeIdle) != 1 {
		t.Errorf("closed: silent %v and %v, asking %v, late %v", silent.closed, other.closed, asking.closed, late.closed)
	}
	if age := time.Since(asking.born); age < newFor {
		t.Errorf("one was cut off %v after it came", age)
	}
}

// A call that lasts too long cuts its connection, for the cause that it has.
func TestOverdue(t *testing.T) {
	f, accept := house(t)
	asking, taking, watching := accept(), accept(), accept()
	asking.begin(1)
	taking.begin(1)
	taking.Hold(1)
	watching.begin(1)
	end, ok := watching.Watch()
	if !ok {
		t.Fatal("no watch")
	}
	f.keeper.Sweep(time.Now().Add(testLimits.Patience - time.Second))
	f.checkHeld(t, 3, 3, 1, 0)
	f.keeper.Sweep(time.Now().Add(testLimits.Patience + time.Second))
	if asking.closed != true || taking.closed != true || watching.closed {
		t.Errorf("closed: asking %v, taking %v, watching %v", asking.closed, taking.closed, watching.closed)
	}
	if f.cuts(t, causeQuestion) != 1 || f.cuts(t, causeAnswers) != 1 {
		t.Errorf("cut for questions %v, for answers %v", f.cuts(t, causeQuestion), f.cuts(t, causeAnswers))
	}
	end()
	f.keeper.Sweep(time.Now().Add(testLimits.Patience + time.Second))
	f.checkHeld(t, 0, 0, 0, 0)
}

// Where there is too much of answers, who has most of them and has had them longest
// is cut off first, and no more than has to be.
func TestPressure(t *testing.T) {
	f, accept := house(t)
	most, some, fresh := accept(), accept(), accept()
	most.begin(1)
	some.begin(1)
	most.Hold(500)
	some.Hold(450)
	f.keeper.Sweep(time.Now().Add(testLimits.Hurry + time.Second))
	f.checkHeld(t, 3, 2, 950, 0) // There is room.
	fresh.Hold(50)
	if some.Room(true) || some.Room(false) || !fresh.Room(false) || fresh.Room(true) || most.Room(false) {
		t.Error("room for the wrong ones")
	}
	f.keeper.Sweep(time.Now())
	f.checkHeld(t, 3, 2, 1000, 0) // Nobody has held it up for long.
	f.keeper.Sweep(time.Now().Add(testLimits.Hurry + time.Second))
	f.checkHeld(t, 2, 1, 500, 0)
	if !most.closed {
		t.Error("another one was cut")
	}
	fresh.Hold(600)
	if fresh.Room(false) {
		t.Error("room beyond what a connection may hold")
	}
}

// Past the half of the calls those who hold many wait for those who hold few, and
// whoever gives calls up as fast as they begin is cut off.
func TestManyCalls(t *testing.T) {
	f, accept := house(t)
	many, few := accept(), accept()
	for id := uint32(1); id <= 9; id++ {
		many.begin(id)
	}
	few.begin(1)
	if many.MayBegin() || !few.MayBegin() {
		t.Error("room for the wrong ones")
	}
	for id := uint32(1); id <= 9; id++ {
		many.giveUp(id)
	}
	f.keeper.Sweep(time.Now())
	if many.closed {
		t.Error("cut off although there was room by then")
	}
	for id := uint32(11); id <= 26; id++ {
		many.begin(id)
		many.giveUp(id)
	}
	if few.MayBegin() {
		t.Error("room beyond the most")
	}
	f.keeper.Sweep(time.Now())
	f.checkHeld(t, 2, 1, 0, 0)
	// In any case there is an end to it, between two sweeps.
	for id := uint32(31); !many.closed && id < 1000; id++ {
		many.begin(id)
		many.giveUp(id)
		many.finish(id) // Whether it was answered or not.
	}
	f.checkHeld(t, 1, 1, 0, 0)
	if f.cuts(t, causeResets) != 1 {
		t.Errorf("%v cut off", f.cuts(t, causeResets))
	}
}

// One shift ends and the next goes on, with every connection served by one of them.
func TestShifts(t *testing.T) {
	listener := make(pipes, 10)
	r := NewRelay(listener)
	first, second := r.Shift(), r.Shift()
	_, a := net.Pipe()
	_, b := net.Pipe()
	listener <- a
	if c, err := first.Accept(); err != nil || c != a {
		t.Fatal(c, err)
	}
	_ = first.Close()
	listener <- b
	if c, err := first.Accept(); err == nil {
		t.Error("accepted after the end", c)
	}
	if c, err := second.Accept(); err != nil || c != b {
		t.Fatal(c, err)
	}
	_ = r.Close()
	if c, err := second.Accept(); err == nil {
		t.Error("accepted after all", c)
	}
}
