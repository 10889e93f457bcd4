package main

import (
	"log"
	"os"
	"path/filepath"
)

func main() {
	log.SetFlags(0)
	for _, file := range rendered {
		text, err := file.render()
		if err != nil {
			log.Fatal(err)
		}
		if err := os.WriteFile(filepath.Join(deploy, file.name), text, 0o644); err != nil {
			log.Fatal(err)
		}
	}
}
