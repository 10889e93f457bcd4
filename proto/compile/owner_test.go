package compile

import (
	"testing"

	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/types/descriptorpb"
)

// Every file has the options that follow from the owner, and no others beside
// its Go package.
func TestLanguageOptionsFollowFromOwner(t *testing.T) {
	set, err := Dir("..")
	if err != nil {
		t.Fatal(err)
	}
	files := 0
	for _, file := range set.File {
		if file.GetPackage() != project+".v1" {
			continue
		}
		files++
		want := languageOptions(Owner, file.GetPackage())
		want.GoPackage = proto.String(file.GetOptions().GetGoPackage())
		if !proto.Equal(file.GetOptions(), want) {
			t.Errorf("%s has the options\n%v, want\n%v", file.GetName(), file.GetOptions(), want)
		}
	}
	if files == 0 {
		t.Error("no file was looked at")
	}
}

// The rule itself, on a domain of two parts and on one of three.
func TestLanguageOptions(t *testing.T) {
	for _, c := range []struct{ owner, java, csharp, php, ruby string }{
		{"example.com", "com.example.knitmath.v1", "Example.Knitmath.V1", `Example\Knitmath\V1`, "Example::Knitmath::V1"},
		{"yarn.example.org", "org.example.yarn.knitmath.v1", "Example.Yarn.Knitmath.V1",
			`Example\Yarn\Knitmath\V1`, "Example::Yarn::Knitmath::V1"},
	} {
		want := &descriptorpb.FileOptions{
			CsharpNamespace:   &c.csharp,
			JavaMultipleFiles: proto.Bool(true),
			JavaPackage:       &c.java,
			ObjcClassPrefix:   proto.String("KNM"),
			PhpNamespace:      &c.php,
			RubyPackage:       &c.ruby,
			SwiftPrefix:       proto.String("Knitmath_"),
		}
		if got := languageOptions(c.owner, "knitmath.v1"); !proto.Equal(got, want) {
			t.Errorf("%s gives\n%v, want\n%v", c.owner, got, want)
		}
	}
}
