package abuse

import (
	"context"
	"encoding/json"
	"errors"
	"fmt"
	"io"
	"net"
	"net/http"
	"os"
	"os/exec"
	"strings"
	"time"

	"google.golang.org/grpc"
	"google.golang.org/grpc/credentials/insecure"

	knitmathv1 "example.com/knitmath/gen/knitmath/v1"
	"example.com/knitmath/service/garbage"
)

// bareGauge answers what it was given, without anything around it.
type bareGauge struct {
	knitmathv1.UnimplementedGaugeServiceServer
	castOn *knitmathv1.ComputeCastOnResponse
	json   []byte
}

func (b *bareGauge) ComputeCastOn(context.Context, *knitmathv1.ComputeCastOnRequest) (*knitmathv1.ComputeCastOnResponse, error) {
	return b.castOn, nil
}

func (b *bareGauge) ServeHTTP(w http.ResponseWriter, r *http.Request) {
	_, _ = io.Copy(io.Discard, r.Body)
	_, _ = w.Write(b.json)
}

// bareOf answers the light question as the program at these addresses does.
func bareOf(program Addresses) (*bareGauge, error) {
	b := &bareGauge{castOn: &knitmathv1.ComputeCastOnResponse{}}
	conn, err := grpc.NewClient("passthrough:///"+program.GRPC, grpc.WithTransportCredentials(insecure.NewCredentials()))
	if err != nil {
		return nil, err
	}
	defer conn.Close()
	if err := conn.Invoke(context.Background(), castOn.method, castOn.message, b.castOn); err != nil {
		return nil, err
	}
	resp, err := http.Post("http://"+program.HTTP+castOn.path, "application/json", strings.NewReader(castOn.json))
	if err != nil {
		return nil, err
	}
	defer resp.Body.Close()
	b.json, err = io.ReadAll(resp.Body)
	return b, err
}

// Bare serves both faces by grpc-go and net/http alone until it is killed, with the answers of a program to light
// questions. It says where on its standard error, as the program does, and collects its garbage like it. What excess
// costs it is what it costs whoever serves on this machine.
func Bare(program Addresses) error {
	garbage.CollectSeldom()
	answers, err := bareOf(program)
	if err != nil {
		return err
	}
	rpc, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		return err
	}
	web, err := net.Listen("tcp", "127.0.0.1:0")
	if err != nil {
		return err
	}
	server := grpc.NewServer()
	knitmathv1.RegisterGaugeServiceServer(server, answers)
	go func() { _ = server.Serve(rpc) }()
	at := Addresses{GRPC: rpc.Addr().String(), HTTP: web.Addr().String(), Admin: web.Addr().String()}
	if err := json.NewEncoder(os.Stderr).Encode(at); err != nil {
		return err
	}
	return (&http.Server{Handler: answers, ReadHeaderTimeout: 5 * time.Second}).Serve(web)
}

// StartBare starts a process that is to call Bare.
func StartBare(cmd *exec.Cmd) (*Program, error) { return started(cmd) }

// Processor is what the process has had of the processor so far, in hundredths of a second.
func (p *Program) Processor() (time.Duration, error) {
	data, err := os.ReadFile(fmt.Sprintf("/proc/%d/stat", p.cmd.Process.Pid))
	if err != nil {
		return 0, err
	}
	_, after, _ := strings.Cut(string(data), ") ") // The name, in brackets, may have spaces.
	fields := strings.Fields(after)
	if len(fields) < 13 {
		return 0, errors.New("no times in " + string(data))
	}
	var user, system int64
	if _, err := fmt.Sscan(fields[11]+" "+fields[12], &user, &system); err != nil {
		return 0, err
	}
	return time.Duration(user+system) * 10 * time.Millisecond, nil
}
