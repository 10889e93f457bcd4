package deploy

import (
	"bytes"
	"errors"
	"io"
	"testing"

	"go.yaml.in/yaml/v3"
)

// manifest is what of kubernetes.yaml is compared with the program. That the file
// has no field which its API does not know is seen in rendering/, which has the
// types for it.
type manifest struct {
	Deployment    deployment
	Services      []svc
	Disruption    disruptionBudget
	Autoscaler    autoscaler
	NetworkPolicy networkPolicy

	documents []any // each as it stands in the file
}

type meta struct {
	Name   string            `yaml:"name"`
	Labels map[string]string `yaml:"labels"`
}

type head struct {
	APIVersion string `yaml:"apiVersion"`
	Kind       string `yaml:"kind"`
	Metadata   meta   `yaml:"metadata"`
}

type selector struct {
	MatchLabels map[string]string `yaml:"matchLabels"`
}

type deployment struct {
	head `yaml:",inline"`
	Spec struct {
		Selector selector `yaml:"selector"`
		Template struct {
			Metadata struct {
				Labels map[string]string `yaml:"labels"`
			} `yaml:"metadata"`
			Spec pod `yaml:"spec"`
		} `yaml:"template"`
	} `yaml:"spec"`
}

type pod struct {
	AutomountServiceAccountToken *bool `yaml:"automountServiceAccountToken"`
	EnableServiceLinks           *bool `yaml:"enableServiceLinks"`
	GraceSeconds                 int   `yaml:"terminationGracePeriodSeconds"`
	SecurityContext              struct {
		RunAsNonRoot   bool   `yaml:"runAsNonRoot"`
		RunAsUser      uint32 `yaml:"runAsUser"`
		RunAsGroup     uint32 `yaml:"runAsGroup"`
		SeccompProfile struct {
			Type string `yaml:"type"`
		} `yaml:"seccompProfile"`
	} `yaml:"securityContext"`
	Spread []struct {
		TopologyKey   string   `yaml:"topologyKey"`
		LabelSelector selector `yaml:"labelSelector"`
	} `yaml:"topologySpreadConstraints"`
	Containers []container `yaml:"containers"`
}

type container struct {
	Name  string   `yaml:"name"`
	Image string   `yaml:"image"`
	Args  []string `yaml:"args"`
	Env   []struct {
		Name  string `yaml:"name"`
		Value string `yaml:"value"`
	} `yaml:"env"`
	Ports []struct {
		Name          string `yaml:"name"`
		ContainerPort int    `yaml:"containerPort"`
	} `yaml:"ports"`
	Resources struct {
		Requests map[string]string `yaml:"requests"`
		Limits   map[string]string `yaml:"limits"`
	} `yaml:"resources"`
	StartupProbe    probe `yaml:"startupProbe"`
	ReadinessProbe  probe `yaml:"readinessProbe"`
	LivenessProbe   probe `yaml:"livenessProbe"`
	SecurityContext struct {
		AllowPrivilegeEscalation *bool `yaml:"allowPrivilegeEscalation"`
		ReadOnlyRootFilesystem   bool  `yaml:"readOnlyRootFilesystem"`
		Capabilities             struct {
			Drop []string `yaml:"drop"`
		} `yaml:"capabilities"`
	} `yaml:"securityContext"`
}

type probe struct {
	HTTPGet struct {
		Path string `yaml:"path"`
		Port string `yaml:"port"`
	} `yaml:"httpGet"`
}

type svc struct {
	head `yaml:",inline"`
	Spec struct {
		ClusterIP string            `yaml:"clusterIP"`
		Selector  map[string]string `yaml:"selector"`
		Ports     []struct {
			Name        string `yaml:"name"`
			Port        int    `yaml:"port"`
			TargetPort  string `yaml:"targetPort"`
			AppProtocol string `yaml:"appProtocol"`
		} `yaml:"ports"`
	} `yaml:"spec"`
}

type disruptionBudget struct {
	head `yaml:",inline"`
	Spec struct {
		MaxUnavailable int      `yaml:"maxUnavailable"`
		Selector       selector `yaml:"selector"`
	} `yaml:"spec"`
}

type autoscaler struct {
	head `yaml:",inline"`
	Spec struct {
		ScaleTargetRef struct {
			APIVersion string `yaml:"apiVersion"`
			Kind       string `yaml:"kind"`
			Name       string `yaml:"name"`
		} `yaml:"scaleTargetRef"`
		MinReplicas int `yaml:"minReplicas"`
		MaxReplicas int `yaml:"maxReplicas"`
		Metrics     []struct {
			Resource struct {
				Name   string `yaml:"name"`
				Target struct {
					AverageUtilization int `yaml:"averageUtilization"`
				} `yaml:"target"`
			} `yaml:"resource"`
		} `yaml:"metrics"`
	} `yaml:"spec"`
}

type networkPolicy struct {
	head `yaml:",inline"`
	Spec struct {
		PodSelector selector `yaml:"podSelector"`
		PolicyTypes []string `yaml:"policyTypes"`
		Ingress     []struct {
			From []struct {
				NamespaceSelector selector `yaml:"namespaceSelector"`
			} `yaml:"from"`
			Ports []struct {
				Port string `yaml:"port"`
			} `yaml:"ports"`
		} `yaml:"ingress"`
		Egress []struct{} `yaml:"egress"`
	} `yaml:"spec"`
}

func readManifest(t *testing.T) manifest {
	t.Helper()
	var m manifest
	m.documents = documentsOf(t, []byte(read(t, "kubernetes.yaml")))
	for _, document := range m.documents {
		m.add(t, document)
	}
	return m
}

func documentsOf(t *testing.T, file []byte) []any {
	t.Helper()
	var all []any
	for documents := yaml.NewDecoder(bytes.NewReader(file)); ; {
		var document any
		if err := documents.Decode(&document); errors.Is(err, io.EOF) {
			return all
		} else if err != nil {
			t.Fatal(err)
		}
		all = append(all, document)
	}
}

func (m *manifest) add(t *testing.T, document any) {
	t.Helper()
	fields, _ := document.(map[string]any)
	var into any
	switch kind := fields["kind"]; kind {
	case "Deployment":
		into = &m.Deployment
	case "Service":
		m.Services = append(m.Services, svc{})
		into = &m.Services[len(m.Services)-1]
	case "PodDisruptionBudget":
		into = &m.Disruption
	case "HorizontalPodAutoscaler":
		into = &m.Autoscaler
	case "NetworkPolicy":
		into = &m.NetworkPolicy
	case "Namespace", "ServiceAccount":
		return
	default:
		t.Fatalf("a document of kind %v", kind)
	}
	text, err := yaml.Marshal(document)
	if err != nil {
		t.Fatal(err)
	}
	if err := yaml.Unmarshal(text, into); err != nil {
		t.Errorf("%v: %v", fields["kind"], err)
	}
}
