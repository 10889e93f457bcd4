package deploy

import (
	"bytes"
	"errors"
	"io"
	"os"
	"testing"

	"go.yaml.in/yaml/v3"
)

// manifest is kubernetes.yaml, with the fields it uses and no other: a field
// that is misspelt, or put in the wrong place, does not decode.
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
		Strategy struct {
			RollingUpdate struct {
				MaxSurge       int `yaml:"maxSurge"`
				MaxUnavailable int `yaml:"maxUnavailable"`
			} `yaml:"rollingUpdate"`
		} `yaml:"strategy"`
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
		MaxSkew           int      `yaml:"maxSkew"`
		TopologyKey       string   `yaml:"topologyKey"`
		WhenUnsatisfiable string   `yaml:"whenUnsatisfiable"`
		LabelSelector     selector `yaml:"labelSelector"`
		MatchLabelKeys    []string `yaml:"matchLabelKeys"`
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
	GRPC struct {
		Port int `yaml:"port"`
	} `yaml:"grpc"`
	HTTPGet struct {
		Path string `yaml:"path"`
		Port string `yaml:"port"`
	} `yaml:"httpGet"`
	PeriodSeconds    int `yaml:"periodSeconds"`
	TimeoutSeconds   int `yaml:"timeoutSeconds"`
	FailureThreshold int `yaml:"failureThreshold"`
}

type svc struct {
	head `yaml:",inline"`
	Spec struct {
		ClusterIP                string            `yaml:"clusterIP"`
		PublishNotReadyAddresses bool              `yaml:"publishNotReadyAddresses"`
		Selector                 map[string]string `yaml:"selector"`
		Ports                    []struct {
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
		MaxUnavailable             int      `yaml:"maxUnavailable"`
		UnhealthyPodEvictionPolicy string   `yaml:"unhealthyPodEvictionPolicy"`
		Selector                   selector `yaml:"selector"`
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
			Type     string `yaml:"type"`
			Resource struct {
				Name   string `yaml:"name"`
				Target struct {
					Type               string `yaml:"type"`
					AverageUtilization int    `yaml:"averageUtilization"`
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
				Protocol string `yaml:"protocol"`
				Port     string `yaml:"port"`
			} `yaml:"ports"`
		} `yaml:"ingress"`
		Egress []struct{} `yaml:"egress"`
	} `yaml:"spec"`
}

func readManifest(t *testing.T) manifest {
	t.Helper()
	file, err := os.ReadFile("kubernetes.yaml")
	if err != nil {
		t.Fatal(err)
	}
	var m manifest
	for documents := yaml.NewDecoder(bytes.NewReader(file)); ; {
		var document any
		if err := documents.Decode(&document); errors.Is(err, io.EOF) {
			return m
		} else if err != nil {
			t.Fatal(err)
		}
		m.documents = append(m.documents, document)
		m.add(t, document)
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
	default:
		t.Fatalf("a document of kind %v", kind)
	}
	text, err := yaml.Marshal(document)
	if err != nil {
		t.Fatal(err)
	}
	strict := yaml.NewDecoder(bytes.NewReader(text))
	strict.KnownFields(true)
	if err := strict.Decode(into); err != nil {
		t.Errorf("%v: %v", fields["kind"], err)
	}
}
