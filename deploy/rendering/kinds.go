package main

import (
	"bytes"
	"errors"
	"fmt"

	monitoringv1 "github.com/prometheus-operator/prometheus-operator/pkg/apis/monitoring/v1"
	appsv1 "k8s.io/api/apps/v1"
	autoscalingv2 "k8s.io/api/autoscaling/v2"
	corev1 "k8s.io/api/core/v1"
	networkingv1 "k8s.io/api/networking/v1"
	policyv1 "k8s.io/api/policy/v1"
	schedulingv1 "k8s.io/api/scheduling/v1"
	metav1 "k8s.io/apimachinery/pkg/apis/meta/v1"
	gatewayv1 "sigs.k8s.io/gateway-api/apis/v1"
	"sigs.k8s.io/json"
	"sigs.k8s.io/yaml"
)

// objects are the documents of a rendering, in the types of their own APIs.
type objects struct {
	Namespace      corev1.Namespace
	Account        corev1.ServiceAccount
	Deployment     appsv1.Deployment
	Services       []corev1.Service
	Disruption     policyv1.PodDisruptionBudget
	Autoscaler     autoscalingv2.HorizontalPodAutoscaler
	NetworkPolicy  networkingv1.NetworkPolicy
	Priority       schedulingv1.PriorityClass
	ServiceMonitor monitoringv1.ServiceMonitor
	Rules          monitoringv1.PrometheusRule
	Gateway        gatewayv1.Gateway
	HTTPRoutes     []gatewayv1.HTTPRoute
	GRPCRoute      gatewayv1.GRPCRoute

	all []metav1.Object
}

// place is where a document of this API and kind is decoded to, or nil.
func (o *objects) place(apiVersion, kind string) metav1.Object {
	switch apiVersion + " " + kind {
	case "v1 Namespace":
		return &o.Namespace
	case "v1 ServiceAccount":
		return &o.Account
	case "apps/v1 Deployment":
		return &o.Deployment
	case "v1 Service":
		return added(&o.Services)
	case "policy/v1 PodDisruptionBudget":
		return &o.Disruption
	case "autoscaling/v2 HorizontalPodAutoscaler":
		return &o.Autoscaler
	case "networking.k8s.io/v1 NetworkPolicy":
		return &o.NetworkPolicy
	case "scheduling.k8s.io/v1 PriorityClass":
		return &o.Priority
	case "monitoring.coreos.com/v1 ServiceMonitor":
		return &o.ServiceMonitor
	case "monitoring.coreos.com/v1 PrometheusRule":
		return &o.Rules
	case "gateway.networking.k8s.io/v1 Gateway":
		return &o.Gateway
	case "gateway.networking.k8s.io/v1 HTTPRoute":
		return added(&o.HTTPRoutes)
	case "gateway.networking.k8s.io/v1 GRPCRoute":
		return &o.GRPCRoute
	}
	return nil
}

func added[T any, P interface {
	*T
	metav1.Object
}](list *[]T) metav1.Object {
	*list = append(*list, *new(T))
	return P(&(*list)[len(*list)-1])
}

// decode reads a rendering. A field that the type does not have, that differs in a
// capital letter or that stands twice is a fault, and so is a second object where
// there is one.
func decode(rendering []byte) (*objects, error) {
	o := &objects{}
	var faults []error
	for document := range bytes.SplitSeq(rendering, []byte("\n---\n")) {
		if err := o.decode(document); err != nil {
			faults = append(faults, err)
		}
	}
	return o, errors.Join(faults...)
}

func (o *objects) decode(document []byte) error {
	text, err := yaml.YAMLToJSONStrict(document)
	if err != nil {
		return err
	}
	var head struct {
		metav1.TypeMeta
		metav1.ObjectMeta `json:"metadata"`
	}
	if err := json.UnmarshalCaseSensitivePreserveInts(text, &head); err != nil {
		return err
	}
	what := head.Kind + " " + head.Name
	into := o.place(head.APIVersion, head.Kind)
	if into == nil {
		return fmt.Errorf("%s: no type for %s %s", what, head.APIVersion, head.Kind)
	}
	if into.GetName() != "" {
		return fmt.Errorf("%s: the second of its kind", what)
	}
	strict, err := json.UnmarshalStrict(text, into)
	for _, fault := range append(strict, err) {
		if fault != nil {
			err = errors.Join(err, fmt.Errorf("%s: %w", what, fault))
		}
	}
	o.all = append(o.all, into)
	return err
}
