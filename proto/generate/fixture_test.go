package main

import (
	"os"
	"path/filepath"
	"testing"

	"example.com/knitmath/proto/compile"
	"google.golang.org/protobuf/types/descriptorpb"
)

// fixture is a small wire that has everything the passes look at, whatever the
// real one has today.
const fixture = `syntax = "proto3";
// Wool. The reasons of violations are
// - REQUIRED: the field is
//   missing.
package knitmath.v1;
import "buf/validate/validate.proto";
import "google/api/annotations.proto";
import "google/api/field_behavior.proto";
import "knitmath/v1/default_value.proto";
import "knitmath/v1/presence.proto";
option go_package = "example.com/wool/v1;woolv1";

// Sums on dyed
// wool.
service DyedWoolService {
  // WindBall winds a ball. It
  // may take a while.
  rpc WindBall(WindBallRequest) returns (WindBallResponse) {
    option (google.api.http) = {post: "/v1/dyed-wool:windBall" body: "*" additional_bindings: {get: "/v1/dyed-wool:windBall"}};
  }
  // ListBalls lists balls.
  rpc ListBalls(CountBallsRequest) returns (ListBallsResponse) {
    option (google.api.http) = {post: "/v1/dyed-wool:listBalls" body: "*"};
  }
  // CountBalls counts balls.
  rpc CountBalls(CountBallsRequest) returns (CountBallsResponse) {
    option (google.api.http) = {post: "/v1/dyed-wool:countBalls" body: "*"};
  }
}

// Which way to
// wind.
enum Way {
  // Left.
  WAY_UNSPECIFIED = 0;
  // Towards the left,
  // as most do.
  WAY_LEFT = 1;
  // Towards the right.
  WAY_RIGHT = 2;
}

// How fast to wind.
enum Pace {
  // As it comes.
  PACE_UNSPECIFIED = 0;
  // From knot to knot.
  PACE_OWN = 1 [(value_needs) = "knots"];
}

// A size.
message Size {
  // Zulu comes first.
  double zulu_cm = 1 [(google.api.field_behavior) = REQUIRED, (buf.validate.field).double = {gt: 0, lte: 1000, example: 22}];
  // Alpha.
  optional double alpha_cm = 2 [
    (google.api.field_behavior) = OPTIONAL, (buf.validate.field).double = {gte: 0.1, lt: 100}, (default_value).number = 10
  ];
}

// A knot, which may hold knots.
message Knot {
  option (buf.validate.message).oneof = {fields: ["name", "way", "knots", "pin"], required: true};
  // Its name.
  string name = 3 [(google.api.field_behavior) = OPTIONAL];
  // Its way.
  Way way = 4 [(google.api.field_behavior) = OPTIONAL];
  // How it ends.
  oneof end {
    option (buf.validate.oneof).required = true;
    // On the left.
    int32 left = 6 [(google.api.field_behavior) = OPTIONAL];
    // On the right.
    int32 right = 7 [(google.api.field_behavior) = OPTIONAL];
  }
  // A pin.
  int32 pin = 5 [(google.api.field_behavior) = OPTIONAL];
  // How often.
  int32 times = 1 [(google.api.field_behavior) = REQUIRED, (buf.validate.field).int32 = {gte: 1, lte: 9}];
  // Knots in it.
  repeated Knot knots = 2 [(google.api.field_behavior) = OPTIONAL, (buf.validate.field).repeated.max_items = 3];
}

// A remark.
message Notice {
  // Why, in
  // one word.
  string reason = 1;
}

// Asks for a ball.
message WindBallRequest {
  // The mass, in
  // grams.
  double mass_g = 1 [(google.api.field_behavior) = REQUIRED, (buf.validate.field).double.gte = 0];
  // Its size.
  Size size = 2 [(google.api.field_behavior) = OPTIONAL];
  // The core.
  Size core = 3 [(google.api.field_behavior) = REQUIRED];
  // Which way.
  Way way = 4 [
    (google.api.field_behavior) = OPTIONAL, (buf.validate.field).enum = {not_in: [2]}, (default_value).text = "WAY_LEFT"
  ];
  // Lengths of the ends.
  repeated double end_cm = 5 [
    (google.api.field_behavior) = OPTIONAL, (buf.validate.field).repeated = {max_items: 2, items: {double: {lte: 50}}}
  ];
  // Its knots.
  repeated Knot knots = 6 [(google.api.field_behavior) = OPTIONAL];
  // Its label.
  optional string label = 7 [
    (google.api.field_behavior) = OPTIONAL, (buf.validate.field).string = {min_len: 1, max_len: 100, example: "red"}
  ];
  // Text on the band.
  string band = 8 [(google.api.field_behavior) = OPTIONAL, (buf.validate.field).string.max_bytes = 49152];
  // Whether to check.
  bool check = 9 [(google.api.field_behavior) = OPTIONAL, (default_value).flag = false];
  // Plies.
  optional int32 plies = 10 [(google.api.field_behavior) = OPTIONAL, (buf.validate.field).int32 = {in: [2, 3, 4]}];
  // Lengths between knots.
  repeated double between_cm = 13 [
    (google.api.field_behavior) = OPTIONAL, (buf.validate.field) = {repeated: {min_items: 3}, ignore: IGNORE_IF_ZERO_VALUE}
  ];
  // How fast.
  Pace pace = 15 [(google.api.field_behavior) = OPTIONAL];
  // How tight the knots are.
  optional int32 tight = 14 [(google.api.field_behavior) = OPTIONAL, (needs) = "knots"];
  // How it is held.
  oneof hold {
    // By a pin.
    int32 pin = 11 [(google.api.field_behavior) = OPTIONAL];
    // By a clip.
    string clip = 12 [(google.api.field_behavior) = OPTIONAL];
  }
  // Parts of the answer.
  repeated string fields = 100 [
    (google.api.field_behavior) = OPTIONAL, (buf.validate.field).repeated = {max_items: 50, items: {string: {max_len: 200}}}
  ];
}

// The ball.
message WindBallResponse {
  // In words.
  string summary = 1;
  // Remarks on the question:
  // - TANGLED, at knots: there are
  //   too many.
  // - SHORT, at no field: little is left.
  repeated Notice notices = 8;
  // Its knots.
  repeated Knot knots = 2;
  // Its size.
  Size size = 3 [(always_sent) = true];
  // The core, if any.
  Size core = 9;
  // Ends, if any.
  optional int32 end_count = 4;
  // Which way.
  Way way = 5;
  // How it is held.
  oneof hold {
    option (buf.validate.oneof).required = true;
    // By a pin.
    int32 pin = 6;
    // By a clip.
    string clip = 7;
  }
}

// The balls.
message ListBallsResponse {
  // In words.
  string summary = 1;
  // A ball a row.
  repeated Size rows = 2;
}

// Asks how many.
message CountBallsRequest {
  option (buf.validate.message).oneof = {fields: ["mass_g", "length_m"], required: true};
  // The mass.
  optional double mass_g = 1 [(google.api.field_behavior) = OPTIONAL];
  // The length.
  optional double length_m = 2 [(google.api.field_behavior) = OPTIONAL];
  // One or the other.
  oneof either {
    // This.
    int32 this = 3 [(google.api.field_behavior) = OPTIONAL];
    // That.
    int32 that = 4 [(google.api.field_behavior) = OPTIONAL];
  }
}

// How many.
message CountBallsResponse {
  // In words.
  string summary = 1;
  // Balls.
  int32 ball_count = 2 [(buf.validate.field) = {int32: {gte: 1}, ignore: IGNORE_IF_ZERO_VALUE}];
}
`

// fixtureExamples are values of the fixture's questions, one of each kind.
var fixtureExamples = map[string]map[string]string{
	"dyed-wool.windBall": {
		"mass_g": "50", "core.zulu_cm": "2.5", "way": "WAY_LEFT", "end_cm": "3 4.5", "knots[1].name": "bow", "knots[1].times": "2",
		"knots[0].left": "1", "knots[0].knots[0].times": "3", "band": "12",
	},
	"dyed-wool.listBalls":  {},
	"dyed-wool.countBalls": {"length_m": "100"},
}

// compiledFixture is the fixture as compiled.
func compiledFixture(t *testing.T) *descriptorpb.FileDescriptorSet {
	t.Helper()
	files := map[string]string{"dyed_wool.proto": fixture}
	for _, options := range []string{"default_value.proto", "presence.proto"} {
		text, err := os.ReadFile("../knitmath/v1/" + options)
		if err != nil {
			t.Fatal(err)
		}
		files[options] = string(text)
	}
	root := t.TempDir()
	dir := filepath.Join(root, "knitmath", "v1")
	if err := os.MkdirAll(dir, 0o700); err != nil {
		t.Fatal(err)
	}
	for name, text := range files {
		if err := os.WriteFile(filepath.Join(dir, name), []byte(text), 0o600); err != nil {
			t.Fatal(err)
		}
	}
	set, err := compile.Dir(root)
	if err != nil {
		t.Fatal(err)
	}
	return set
}
