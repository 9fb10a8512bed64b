window.SwaggerUIBundle({
  url: "openapi.json",
  dom_id: "#operations",
  deepLinking: true,
  validatorUrl: null,
  defaultModelsExpandDepth: 0,
  defaultModelRendering: "example",
  docExpansion: "list",
  tryItOutEnabled: false,
});
