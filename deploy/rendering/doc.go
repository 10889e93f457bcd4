// Command rendering writes what is made of the kustomizations beside it:
//
//	go -C deploy/rendering run .
//
// writes ../kubernetes.yaml, which is ../base as kustomize renders it, and
// ../components/monitoring/rules.yaml, which is ../alerts.yaml as an object of the
// Prometheus operator. Its tests decode every document of every overlay into the
// types of its own API. It is a module of its own, because the service has no use
// for the fifty modules that kustomize and those types bring.
package main
