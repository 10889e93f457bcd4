package service

import (
	"fmt"
	"net/http"
	"sort"
	"strings"

	"google.golang.org/protobuf/reflect/protoreflect"
	"google.golang.org/protobuf/reflect/protoregistry"
)

// wirePackage is the proto package of all services.
const wirePackage = "knitmath.v1"

// wireServices are all services of the package that are linked in, by name.
func wireServices() []protoreflect.ServiceDescriptor {
	var all []protoreflect.ServiceDescriptor
	protoregistry.GlobalFiles.RangeFilesByPackage(wirePackage, func(file protoreflect.FileDescriptor) bool {
		for i := range file.Services().Len() {
			all = append(all, file.Services().Get(i))
		}
		return true
	})
	sort.Slice(all, func(i, j int) bool { return all[i].Name() < all[j].Name() })
	return all
}

// isWireMethod tells whether a method exists, by its name as gRPC writes it.
func isWireMethod(fullMethod string) bool {
	_, err := answerDescriptor(fullMethod)
	return err == nil && strings.HasPrefix(fullMethod, "/"+wirePackage+".")
}

// route is one path of the JSON face.
type route struct {
	path     string
	method   string // as gRPC writes it
	question protoreflect.MessageDescriptor
	get      bool // short questions may also be asked by GET
	table    bool // the answer is one, and may be had as CSV
}

// allowed is the Allow header of the path.
func (r route) allowed() string {
	if r.get {
		return "GET, HEAD, POST"
	}
	return http.MethodPost
}

// readRoutes reads the paths from the google.api.http option of every method, so
// that no other paths are answered than the document has. A binding that would be read
// wrongly is an error.
func readRoutes() (map[string]route, error) {
	routes := map[string]route{}
	for _, service := range wireServices() {
		for i := range service.Methods().Len() {
			r, err := readRoute(service.Methods().Get(i))
			if err != nil {
				return nil, err
			}
			routes[r.path] = r
		}
	}
	return routes, nil
}

func readRoute(method protoreflect.MethodDescriptor) (route, error) {
	rule := bindingOf(method)
	if rule.post == "" || rule.body != "*" {
		return route{}, fmt.Errorf("%s: want a POST binding of the whole body", method.FullName())
	}
	name := "/" + string(method.Parent().FullName()) + "/" + string(method.Name())
	r := route{path: rule.post, method: name, question: method.Input(), table: tableOf(method.Output()) != nil}
	for _, more := range rule.more {
		if more.get != r.path {
			return route{}, fmt.Errorf("%s: want no binding but GET on the path of the POST", method.FullName())
		}
		r.get = true
	}
	return r, nil
}

// index lists the endpoints for a person who opens the root in a browser.
func index(routes map[string]route) string {
	paths := make([]string, 0, len(routes))
	for path := range routes {
		paths = append(paths, path)
	}
	sort.Strings(paths)
	text := "knitmath: the arithmetic of hand knitting, over JSON and gRPC.\n\n" +
		"GET, HEAD       /openapi.json   every question and answer, field by field\n" +
		"GET, HEAD       /reference      the same as pages to read, and to try it\n" +
		"GET, HEAD       " + versionPath + "        which release answers\n"
	for _, path := range paths {
		text += fmt.Sprintf("%-15s %s\n", routes[path].allowed(), path)
	}
	return text
}
