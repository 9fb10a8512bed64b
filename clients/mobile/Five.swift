// The five lines of clients/README.md, a union, and a batch; held against the generated client, not compiled.
import Ductrun

let service = DuctrunAPIConfiguration(basePath: "http://127.0.0.1:8000")
let bank = SpacersRequest(length: Length(unit: .FT, value: 300), tiers: [3, 3, 2])
let answer = try await BankAPI.calculateSpacers(spacersRequest: bank, apiConfiguration: service)
print(answer.result.stationCount)

let cable = Cable.typeListedCable(ListedCable(insulation: .THHN, size: .AWG_4_0))
let conduit = Conduit.typeListedConduit(ListedConduit(tradeSize: .SIZE_2, type: .PVC_SCHEDULE_40))
let request = FillRequest(cables: [CableLine(cable: cable, count: 5)], conduit: conduit)
let fill = try await FillAPI.calculateFill(fillRequest: request, request: .COMPLETED, apiConfiguration: service)
print(fill.result.fillPercent)

let item = BatchItem.typeSpacersItem(SpacersItem(id: "a", request: bank))
let batch = try await BatchesAPI.calculateBatch(batchRequest: BatchRequest(items: [item]), apiConfiguration: service)
print(batch.failedCount)
