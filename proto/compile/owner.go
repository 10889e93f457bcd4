package compile

import (
	"slices"
	"strings"

	"google.golang.org/protobuf/proto"
	"google.golang.org/protobuf/types/descriptorpb"
)

// Owner is the internet domain under which the project is published. The names
// that other languages give to the generated code follow from it, and so does
// Domain. Whoever publishes the project under a domain of their own replaces it
// here and mends what the tests then refuse: the options of the .proto files,
// and the service's Domain.
const Owner = "example.com"

// Domain is the domain of every ErrorInfo that the service sends.
const Domain = project + "." + Owner

// project is the first part of the names of all packages.
const project = "knitmath"

// languageOptions returns the options for languages other than Go that a file of
// the given proto package has: "knitmath.v1" of example.com is
// com.example.knitmath.v1 in Java and Example.Knitmath.V1 in C#. Namespaces
// written in capitals leave the last part of the domain out. Objective-C and
// Swift have no namespaces, only a prefix without an owner.
func languageOptions(owner, pkg string) *descriptorpb.FileOptions {
	labels := strings.Split(owner, ".")
	slices.Reverse(labels)
	var namespace []string
	for _, part := range append(labels[1:len(labels):len(labels)], strings.Split(pkg, ".")...) {
		namespace = append(namespace, capitalised(part))
	}
	return &descriptorpb.FileOptions{
		CsharpNamespace:   proto.String(strings.Join(namespace, ".")),
		JavaMultipleFiles: proto.Bool(true),
		JavaPackage:       proto.String(strings.Join(labels, ".") + "." + pkg),
		ObjcClassPrefix:   proto.String("KNM"),
		PhpNamespace:      proto.String(strings.Join(namespace, `\`)),
		RubyPackage:       proto.String(strings.Join(namespace, "::")),
		SwiftPrefix:       proto.String(capitalised(project) + "_"),
	}
}

// capitalised makes the first letter of an ASCII word a capital.
func capitalised(word string) string {
	return strings.ToUpper(word[:1]) + word[1:]
}
